/** Lengths are compared as whole nanometres, in which every 64th of an inch is whole: halves of a sheet then meet exactly. */
const perMetre = 1e9;

/** m as whole nanometres. */
export const wholeOf = (metres: number): number => Math.round(metres * perMetre);

/** Whole nanometres as m. */
export const metresOf = (whole: number): number => whole / perMetre;

/** The greatest whole number that divides all of them; 1 for none. */
export function divisorOf(numbers: readonly number[]): number {
  let all = 0;
  for (const x of numbers) {
    let [a, b] = [all, Math.abs(x)];
    while (b > 0) [a, b] = [b, a % b];
    all = a;
  }
  return all || 1;
}
