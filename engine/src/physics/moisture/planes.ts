/** One layer, inside first: m²K/W, and its vapour resistance as m of still air. Both 0 or more. */
export type VapourLayer = { readonly resistance: number; readonly sd: number };

/** A place where water can gather, by how far in it lies. */
export type Plane = {
  /** m of still air from the inside surface. */
  readonly sd: number;
  /** m²K/W from the inside air to its inner and outer face; they differ where a layer holds back no vapour. */
  readonly from: number;
  readonly to: number;
  /** The layer it lies in, counted from the inside, and how far through: 1 is its outer face. */
  readonly layer: number;
  readonly share: number;
};

export type CutWall = {
  /** The inside surface first and the outside surface last. */
  readonly planes: readonly Plane[];
  /** m²K/W from air to air. */
  readonly total: number;
};

/** A layer above this resistance is cut into strips no larger, m²K/W. Source: `iso-13788.interstitial`. */
const stripMost = 0.25;
/** Closer than this, in m of still air, two faces cannot hold different pressures and are one plane. */
const apart = 1e-6;

/**
 * Cuts layers into planes from surface to surface. Throws on layers without any vapour resistance, negative or not
 * finite numbers: what is left is no wall that vapour can be followed through.
 */
export function cutIntoPlanes(
  layers: readonly VapourLayer[],
  films: { readonly inside: number; readonly outside: number },
): CutWall {
  const bad = layers.findIndex(
    (l) => !(l.resistance >= 0 && l.sd >= 0 && l.resistance + l.sd < Number.POSITIVE_INFINITY),
  );
  if (bad >= 0)
    throw new RangeError(`moisture: layer ${bad + 1} needs a resistance and a vapour resistance of 0 or more`);
  if (!(layers.reduce((a, l) => a + l.sd, 0) > apart)) throw new RangeError('moisture: the layers hold back no vapour');
  const planes: Plane[] = [{ sd: 0, from: films.inside, to: films.inside, layer: 0, share: 0 }];
  let r = films.inside;
  let sd = 0;
  layers.forEach((l, layer) => {
    const strips = Math.max(1, Math.ceil(l.resistance / stripMost - 1e-9));
    for (let i = 1; i <= strips; i++) {
      const share = i / strips;
      add(planes, {
        sd: sd + l.sd * share,
        from: r + l.resistance * share,
        to: r + l.resistance * share,
        layer,
        share,
      });
    }
    r += l.resistance;
    sd += l.sd;
  });
  return { planes, total: r + films.outside };
}

function add(planes: Plane[], next: Plane): void {
  const last = planes.at(-1);
  if (last && next.sd - last.sd < apart) planes[planes.length - 1] = { ...last, to: next.to };
  else planes.push(next);
}
