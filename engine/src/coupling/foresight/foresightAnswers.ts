/** A way to run a year on one's own power, from what is set up to what nobody can better. */
export type ControlWay = {
  readonly id: 'as-set' | 'cooler' | 'rule' | 'rule-like-today' | 'timing' | 'best';
  /** Litres of fuel, and hours of the generator where they are known. */
  readonly litres: number;
  readonly hours?: number;
  /** K h by which the room with the thermostat is colder than it may be, and kWh that the household goes without. */
  readonly cold: number;
  readonly short: number;
};

/**
 * What control could still save on the same house, sun and loads. `timing` and `best` are bounds: battery and generator
 * timed with the whole year known, and the heat moved within the comfort band as well. No way of control goes below.
 */
export type Foresight = {
  /** What is counted: fuel, or without a generator the cold. */
  readonly of: 'fuel' | 'cold';
  readonly ways: readonly ControlWay[];
  /** What our own check of the best says: gap of cost and bound, largest miss of a condition. */
  readonly certificate: { readonly gap: number; readonly miss: number; readonly holds: boolean };
  /** K by which the bounds may let the house be warmer and cooler, and by which the rule does. */
  readonly band: { readonly warmer: number; readonly cooler: number };
  readonly rule: { readonly ahead: number; readonly cooler: number; readonly restAt: number };
  /** The house as the bound sees it: hours in which its warmth fades, K that this misses of K by which it strayed. */
  readonly house: { readonly fades: number; readonly missed: number; readonly stray: number };
};

/** What counts in a way. */
export const countOf = ({ of }: Foresight, way: ControlWay): number => (of === 'fuel' ? way.litres : way.cold);

/** The share of what is counted now that another way saves, not below zero; 0 where there is nothing to save. */
export function savedBy(year: Foresight, id: ControlWay['id']): number {
  const [now, then] = (['as-set', id] as const).map((which) => year.ways.find((w) => w.id === which));
  if (!now || !then || !(countOf(year, now) > 0)) return 0;
  return Math.max(0, 1 - countOf(year, then) / countOf(year, now));
}
