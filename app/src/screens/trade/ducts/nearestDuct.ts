import type { DuctPicture, Spot } from '@kneewall/documents';

/** px from the middle of a duct within which a finger means it. */
const reach = 28;

/** The section nearest to a spot of its picture, or none within a finger's reach. */
export function nearestDuct(picture: DuctPicture, at: Spot): string | undefined {
  const near = picture.ducts
    .map(({ duct, way }) => ({ id: duct.id, far: distanceTo(way, at) }))
    .filter(({ far }) => far <= reach)
    .sort((a, b) => a.far - b.far);
  return near[0]?.id;
}

const distanceTo = (way: readonly Spot[], at: Spot): number =>
  Math.min(
    Number.POSITIVE_INFINITY,
    ...way.slice(1).map((to, i) => {
      const from = way[i] ?? to;
      const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
      const square = dx * dx + dy * dy;
      const along = square === 0 ? 0 : ((at[0] - from[0]) * dx + (at[1] - from[1]) * dy) / square;
      const t = Math.max(0, Math.min(1, along));
      return Math.hypot(at[0] - from[0] - t * dx, at[1] - from[1] - t * dy);
    }),
  );
