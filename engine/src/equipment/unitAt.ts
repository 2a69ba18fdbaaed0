import { airDensity, standardPressure } from '../physics/air/index.ts';
import { attempt, type Outcome } from '../plan/outcome.ts';
import { coilOf, splitCooling } from './coil.ts';
import type { UnitModel, UnitSpeed } from './result.ts';
import { defrostLoss, readSheet } from './sheet.ts';

/** Share of the lost air density by which a unit's capacity falls, and of capacity lost to frost at 35 °F. */
export type Corrections = { readonly altitudeShare: number; readonly frostLoss: number };
/** Sources: `equipment.altitude` (common practice), `equipment.defrost` (from memory). */
export const usualCorrections: Corrections = { altitudeShare: 0.5, frostLoss: 0.1 };

export type UnitAt = {
  readonly mode: 'heating' | 'cooling';
  readonly outdoor: number;
  /** Air into the coil: °C, kg/kg. */
  readonly entering: number;
  readonly enteringHumidity: number;
  /** m³/s actual at the blower. */
  readonly flow: number;
  /** Pa */
  readonly pressure: number;
  readonly speed: UnitSpeed;
};

/** What the unit gives, W, heat and cooling positive, with altitude and defrost counted. Outside its sheet: out of range. */
export function unitAt(
  unit: UnitModel,
  at: UnitAt,
  corrections = usualCorrections,
): Outcome<{ sensible: number; latent: number; power: number }> {
  return attempt(() => {
    if (at.mode === 'heating') {
      const { capacity, power } = heatingAt(unit, at, corrections);
      return { sensible: capacity, latent: 0, power };
    }
    const sheet = readSheet(unit, at.mode, at.speed, at.outdoor);
    const total = sheet.capacity * altitudeFactor(at.pressure, corrections.altitudeShare);
    const coil = coilOf(sheet.row, at.pressure);
    const massFlow = at.flow * airDensity(at.entering, at.pressure);
    const split = coil
      ? splitCooling(coil, total, { t: at.entering, w: at.enteringHumidity }, massFlow, at.pressure)
      : {
          sensible: total * (sheet.row.sensibleShare ?? 0.75),
          latent: total * (1 - (sheet.row.sensibleShare ?? 0.75)),
        };
    return { ...split, power: sheet.power };
  });
}

/** Heat a unit gives at an outdoor temperature, W, and the steps to it. Ends the enclosing attempt outside its sheet. */
export function heatingAt(
  unit: UnitModel,
  at: Pick<UnitAt, 'outdoor' | 'pressure' | 'speed'>,
  { altitudeShare, frostLoss }: Corrections,
): { capacity: number; power: number; sheet: number; thin: number; loss: number } {
  const { capacity: sheet, power, row } = readSheet(unit, 'heating', at.speed, at.outdoor);
  const thin = altitudeFactor(at.pressure, altitudeShare);
  const loss = row.defrostCounted ? 0 : defrostLoss(at.outdoor, frostLoss);
  return { capacity: sheet * thin * (1 - loss), power: power * (1 - 0.15 * loss), sheet, thin, loss };
}

/** Capacity against sea level: a share of the density that is missing. */
export const altitudeFactor = (pressure: number, share: number): number =>
  1 - share * (1 - pressure / standardPressure(0));
