/** Share of its energy at which a battery's life is said to end. Source: `offgrid.fade`. */
export const endShare = 0.8;

/** A battery's years and cycles to the end of its life. */
type Life = { readonly cycles: number; readonly years: number };

/**
 * Years until so much of its energy is left, in so many full cycles a year. Age and use each wear evenly and bring it to
 * `endShare` at their ends; `together` adds the two, else the faster one counts. Source: `offgrid.fade`.
 */
export function yearsTo(share: number, life: Life, cyclesAYear: number, together: boolean): number {
  const [byAge, byUse] = [1 / life.years, cyclesAYear / life.cycles];
  const pace = (1 - endShare) * (together ? byAge + byUse : Math.max(byAge, byUse));
  return (1 - share) / pace;
}
