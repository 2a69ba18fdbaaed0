import { fromTests } from './published.ts';
import type { Published, RowName, UnitModel, UnitRow } from './result.ts';
import { type EuropeanPoint, europeanSeason, meetLoad, type Season } from './season/index.ts';

/** °C of the part-load points at the European rating, average climate. Source: `equipment.europe-season`. */
const points = [-7, 2, 7, 12] as const;
const cyclic = 0.25;
/** K: the points are whole °C. */
const near = 0.05;
/** °C at which the design load is met and no more: common practice, no source. */
const balance = -7;
/** Share of the design load (-10 °C) that is left at the balance. */
const shareAtBalance = (16 - balance) / (16 + 10);

/**
 * The heating figure of the European rating, average climate, from rows at highest and lowest speed at its four
 * points; the efficiency at part load runs straight between the two. Source: `equipment.europe-season`.
 */
export function europeanHeating(unit: UnitModel): Published {
  const named = points.flatMap((outdoor) =>
    (['most', 'least'] as const).map((speed): [string, RowName] => [
      `${speed} ${outdoor}`,
      { mode: 'heating', speed, outdoor },
    ]),
  );
  const season = (rows: Readonly<Record<string, UnitRow>>): Season => {
    const at = (speed: string, outdoor: number): UnitRow => {
      const row = rows[`${speed} ${outdoor}`];
      if (!row) throw new Error(`assert: the row ${speed} ${outdoor} was found`);
      return row;
    };
    const design = at('most', balance).capacity / shareAtBalance;
    const loadAt = (outdoor: number): number => (design * (16 - outdoor)) / 26;
    const measured = points.map((outdoor): EuropeanPoint => {
      const [most, least] = [at('most', outdoor), at('least', outdoor)];
      // Cycling is the method's own business: at or below its lowest speed a unit counts as at that speed.
      const load = Math.max(loadAt(outdoor), least.capacity);
      const { delivered, input } = meetLoad([least, most], load, cyclic);
      return { outdoor, most: most.capacity, least: least.capacity, cop: delivered / input };
    });
    return europeanSeason(measured, 'average', design, cyclic);
  };
  return fromTests(unit, Object.fromEntries(named), season, near);
}
