type Way = readonly (readonly [number, number, number])[] | undefined;

/** m off a box's middle within which a duct still counts as drawn from it straight. */
const onLine = 0.05;

/**
 * From which side of a box a duct is drawn in plan, looking along the box, and how far along, m. Nothing where either is not drawn
 * in plan. A plan is drawn with its second axis up the sheet: left is a quarter turn against the clock.
 */
export function drawnFrom(
  box: Way,
  duct: Way,
): { readonly side: 'left' | 'right' | 'end'; readonly along: number } | undefined {
  const [start, end] = [box?.[0], box?.at(-1)];
  const first = duct?.[0];
  if (!start || !end || !first) return undefined;
  const [dx, dy] = [end[0] - start[0], end[1] - start[1]];
  const long = Math.hypot(dx, dy);
  if (long < onLine) return undefined;
  const off = (p: readonly [number, number, number]): number =>
    (dx * (p[1] - start[1]) - dy * (p[0] - start[0])) / long;
  const along = (dx * (first[0] - start[0]) + dy * (first[1] - start[1])) / long;
  const aside = [first, duct?.[1] ?? first].map(off).find((o) => Math.abs(o) > onLine);
  if (Math.abs(off(first)) <= onLine && along > long - onLine) return { side: 'end', along };
  return aside === undefined ? undefined : { side: aside > 0 ? 'left' : 'right', along };
}
