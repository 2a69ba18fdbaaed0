import type { PowerYearInputs } from './powerYearJob.ts';

/** Household use by hour of the day, against its mean. Source: `offgrid.household` (common practice). */
const householdHours = [
  0.5, 0.45, 0.45, 0.45, 0.45, 0.6, 0.9, 1.3, 1.25, 1.0, 0.95, 1.0, 1.15, 1.0, 0.9, 0.9, 1.0, 1.35, 1.7, 1.75, 1.6, 1.4,
  1.1, 0.85,
] as const;

/** W by step of the day for kWh a day. */
export function householdDay(
  { daily, hours }: Pick<PowerYearInputs['power']['household'], 'daily' | 'hours'>,
  perDay: number,
): Float64Array {
  const shape = hours ?? householdHours;
  const mean = shape.reduce((a, x) => a + x, 0) / 24;
  return Float64Array.from(
    { length: perDay },
    (_, i) => (((daily * 1000) / 24) * (shape[Math.floor((i * 24) / perDay)] ?? 1)) / mean,
  );
}
