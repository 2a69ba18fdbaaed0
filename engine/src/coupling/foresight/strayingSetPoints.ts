/** K by which set points stray, and hours for which they do: enough of a stir that every part of the house answers. */
const strays = [0, 1.5, -1, 2] as const;
const longest = 24;

/** Set points that stray by no pattern, K by step: the same every time, so that equal houses are fitted alike. */
export function strayingSetPoints(steps: number, perHour: number): Float64Array {
  const raised = new Float64Array(steps);
  let seed = 1;
  const next = (): number => {
    seed = (seed * 1_103_515_245 + 12_345) % 2_147_483_648;
    return seed / 2_147_483_648;
  };
  for (let i = 0; i < steps; ) {
    const until = i + perHour * Math.ceil(longest * next() ** 2 + 1);
    raised.fill(strays[Math.floor(next() * strays.length)] ?? 0, i, until);
    i = until;
  }
  return raised;
}
