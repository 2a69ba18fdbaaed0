import type { UnitRow, UnitSpeed } from '../../equipment/result.ts';

/** Rows of a sheet for one speed, coldest first: °C, W of heat, W drawn. */
export type SpeedLine = readonly (readonly [outdoor: number, capacity: number, power: number])[];

const speeds: readonly UnitSpeed[] = ['least', 'between', 'rated', 'most'];

/** The heating rows of a sheet by speed, least heat first; a speed with one row holds everywhere. */
export const speedLines = (rows: readonly UnitRow[]): readonly SpeedLine[] =>
  speeds
    .map((speed) =>
      rows
        .filter((r) => r.mode === 'heating' && r.speed === speed)
        .map((r) => [r.outdoor, r.capacity, r.power] as const)
        .sort((a, b) => a[0] - b[0]),
    )
    .filter((line) => line.length > 0);

/** W of heat and W drawn of one speed at an outdoor temperature, on straight lines; beyond the ends as at the ends. */
function at(line: SpeedLine, outdoor: number): readonly [number, number] {
  const next = line.findIndex((r) => r[0] >= outdoor);
  const b = line[next < 0 ? line.length - 1 : next];
  const a = line[Math.max(0, next < 0 ? line.length - 1 : next - 1)];
  if (!a || !b || a[0] === b[0]) return [b?.[1] ?? 0, b?.[2] ?? 0];
  const share = Math.min(1, Math.max(0, (outdoor - a[0]) / (b[0] - a[0])));
  return [a[1] + share * (b[1] - a[1]), a[2] + share * (b[2] - a[2])];
}

/** Heat and power of every speed at an outdoor temperature, least heat first. */
const states = (lines: readonly SpeedLine[], outdoor: number) =>
  lines.map((l) => at(l, outdoor)).sort((a, b) => a[0] - b[0]);

/**
 * W that the sheet draws for so much heat at that outdoor temperature: between speeds on a straight line, below the lowest in
 * proportion (it starts and stops), above the highest the rest as resistance. NaN without lines.
 */
export function plannedPower(lines: readonly SpeedLine[], outdoor: number, heat: number): number {
  const all = states(lines, outdoor);
  const [first] = all;
  const last = all.at(-1);
  if (!first || !last || !(first[0] > 0)) return Number.NaN;
  if (heat <= first[0]) return (first[1] * Math.max(0, heat)) / first[0];
  if (heat >= last[0]) return last[1] + heat - last[0];
  const k = all.findIndex(([q]) => q >= heat);
  const [q1, p1] = all[k - 1] ?? first;
  const [q2, p2] = all[k] ?? last;
  return q1 === q2 ? p2 : p1 + ((heat - q1) * (p2 - p1)) / (q2 - q1);
}

/** W of heat that the sheet gives for so much power: the other way round. */
export function plannedHeat(lines: readonly SpeedLine[], outdoor: number, power: number): number {
  let low = 0;
  let high = 200_000;
  if (Number.isNaN(plannedPower(lines, outdoor, 1))) return Number.NaN;
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (plannedPower(lines, outdoor, middle) > power) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}
