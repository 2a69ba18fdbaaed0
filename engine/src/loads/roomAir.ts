import type { ResolvedProject } from '@kneewall/project';
import type { ClimateMonth } from '../climate/result.ts';
import { daysInMonth } from '../physics/calendar.ts';
import { type MonthAir, magnusPressure, vapourExcess } from '../physics/moisture/index.ts';
import type { Recorder } from '../physics/recorder.ts';
import type { Scenario } from '../plan/scenario.ts';

/**
 * How damp rooms are, by the humidity classes of ISO 13788: dwellings lived in and aired as usual are class 2, taken
 * from its lower limit (the upper one of class 1) to its upper one; where nobody knows it is class 3. Source:
 * `iso-13788.classes`.
 */
export const dampness = { low: 1, likely: 2, high: 3 } as const;
/** From the driest rooms to the dampest. */
export type RoomCase = keyof typeof dampness;
export type Dampness = (typeof dampness)[keyof typeof dampness];

/**
 * Air on both sides month by month. Rooms are kept between the two temperatures wanted. Vapour indoors is that
 * outdoors and the excess of the class, at most what air of that warmth can hold; in months hotter than the rooms the
 * air is cooled, and as dry as wanted.
 */
export function airByMonth(
  setpoints: ResolvedProject['house']['setpoints'],
  months: readonly ClimateMonth[],
  damp: Dampness,
  s: Scenario,
): MonthAir[] {
  const [coolest, warmest] = [s.of(setpoints.heating), Math.max(s.of(setpoints.heating), s.of(setpoints.cooling))];
  return months.map(({ month, mean, relativeHumidity }) => {
    const indoor = Math.max(coolest, Math.min(warmest, mean));
    const outdoorVapour = relativeHumidity * magnusPressure(mean);
    const most = magnusPressure(indoor) * (mean > warmest ? s.of(setpoints.humidity) : 1);
    const indoorVapour = Math.min(most, outdoorVapour + vapourExcess(damp, mean));
    return { indoor, outdoor: mean, indoorVapour, outdoorVapour, days: daysInMonth[month - 1] ?? 30 };
  });
}

/** Takes down the air of one month. */
export function recordAir(air: MonthAir, rec: Recorder): void {
  rec.step('t_in', 'table', {}, air.indoor, '°C', 'iso-13788.classes');
  rec.step('t_out', 'table', {}, air.outdoor, '°C', 'iso-13788.classes');
  rec.step('p_out', 'table', { t_out: air.outdoor }, air.outdoorVapour, 'Pa', 'iso-13788.saturation');
  const excess = air.indoorVapour - air.outdoorVapour;
  rec.step(
    'p_in',
    'p_out + dp',
    { p_out: air.outdoorVapour, dp: excess },
    air.outdoorVapour + excess,
    'Pa',
    'iso-13788.classes',
  );
}
