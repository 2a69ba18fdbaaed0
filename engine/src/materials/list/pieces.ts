/** So that a need of exactly three bags is three bags, whatever the last bit says. */
const slack = 1e-9;

/** The pack of which the fewest hold so much: the smallest that does alone, else the largest. 0 where none is known. */
export const packFor = (wanted: number, packs: readonly number[]): number =>
  packs.find((p) => p >= wanted * (1 - slack)) ?? packs.at(-1) ?? 0;

/** Whole pieces that hold so much. */
export const piecesFor = (wanted: number, piece: number): number =>
  wanted > 0 && piece > 0 ? Math.ceil((wanted / piece) * (1 - slack)) : 0;
