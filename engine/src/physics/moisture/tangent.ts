/** Against an upper bound this share of it counts as touching, so that no contact hangs on the last bit. */
const touch = 1e-9;

/** Pressure line through a wall: which planes it bends at, innermost first, and its pressure there, Pa. */
export type TangentLine = { readonly at: readonly number[]; readonly pressure: readonly number[] };

/**
 * The vapour pressure line of the tangent construction: the lower convex hull, against sd, of the pressures at both
 * surfaces and the saturation pressures between, taut between planes that already hold water and so stay at
 * saturation. `sd` strictly rising, `bound` Pa, one each a plane; the ends' bounds are the pressures at the surfaces.
 * Source: `iso-13788.interstitial`.
 */
export function tangentLine(
  sd: readonly number[],
  bound: readonly number[],
  wet: (plane: number) => boolean,
): TangentLine {
  const last = sd.length - 1;
  const chain: number[] = [0];
  // What lies before the last pinned plane is settled and is never taken back.
  let settled = 1;
  for (let i = 1; i <= last; i++) {
    const pinned = i === last || wet(i);
    while (chain.length > settled && !bends(sd, bound, chain.at(-2) ?? 0, chain.at(-1) ?? 0, i)) chain.pop();
    chain.push(i);
    if (pinned) settled = chain.length;
  }
  return { at: chain, pressure: chain.map((i) => bound[i] ?? 0) };
}

/** Whether plane b lies below the line from a to c. */
function bends(sd: readonly number[], bound: readonly number[], a: number, b: number, c: number): boolean {
  const [sa = 0, sb = 0, sc = 0] = [sd[a], sd[b], sd[c]];
  const [pa = 0, pb = 0, pc = 0] = [bound[a], bound[b], bound[c]];
  const line = pa + ((pc - pa) * (sb - sa)) / (sc - sa);
  return line - pb > touch * pb;
}
