import { standardPressure, wetBulb } from '../physics/air/index.ts';
import { attempt, type Outcome, unresolved } from '../plan/outcome.ts';
import { type Coil, coilBetween, coilOf, standardAir } from './coil/fit.ts';
import { type CoilAt, coilOutput, dryAirFlow } from './coil/operate.ts';
import { type Corrections, type HeatingCorrections, usualCorrections } from './corrections.ts';
import type { UnitModel, UnitSpeed } from './result.ts';
import { betweenRows, defrostLoss, type Nearness, type Output, readSheet } from './sheet.ts';

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
  /** W of blower heat beyond what the sheet counts, for the flow (m³/s) that the sheet states. */
  readonly fanHeat?: (ratedFlow: number | undefined) => number;
};

export type UnitOutput = { readonly sensible: number; readonly latent: number; readonly power: number };

/**
 * What the unit gives, W, heat and cooling positive, with altitude, defrost, the real flow and the blower's heat
 * counted. Outside its sheet, or where its coil would ice over: out of range.
 */
export function unitAt(unit: UnitModel, at: UnitAt, corrections = usualCorrections(unit)): Outcome<UnitOutput> {
  return attempt(() => {
    if (at.mode === 'heating') {
      const { capacity, power, ratedFlow } = heatingAt(unit, at, corrections);
      const fan = at.fanHeat?.(ratedFlow) ?? 0;
      return { sensible: capacity + fan, latent: 0, power: power + fan };
    }
    const { sheet, coil, split } = coolingAt(unit, at, corrections);
    const fan = at.fanHeat?.(betweenRows(sheet, (r) => r.airflow)) ?? 0;
    const { sensible, latent } = coil ? wetSplit(unit, coil, split) : byShare(sheet, split, corrections);
    return { sensible: sensible - fan, latent, power: sheet.power + fan };
  });
}

/** The sheet at that outdoor temperature, its coil where it tells of one, and what that coil meets. */
export function coolingAt(
  unit: UnitModel,
  at: UnitAt,
  corrections: Corrections,
): { readonly sheet: Output; readonly coil: Coil | undefined; readonly split: CoilAt } {
  const sheet = readSheet(unit, 'cooling', at.speed, at.outdoor, nearnessTo(at));
  return {
    sheet,
    coil: coilIn(sheet),
    split: {
      entering: { t: at.entering, w: at.enteringHumidity },
      flow: at.flow,
      pressure: at.pressure,
      capacity: sheet.capacity * altitudeFactor(at.pressure, corrections.altitudeShare),
      slope: corrections.coilSlope,
    },
  };
}

/** K of wet bulb, and tenths of the flow, by which a row's air differs. */
function nearnessTo(at: UnitAt): Nearness {
  const entering = { t: at.entering, w: at.enteringHumidity };
  const bulb = wetBulb(entering.t, entering.w, at.pressure);
  const massFlow = dryAirFlow({ entering, flow: at.flow, pressure: at.pressure });
  return (row) =>
    Math.abs((row.indoorWetBulb ?? bulb) - bulb) + 10 * Math.abs(((row.airflow ?? 0) * standardAir) / massFlow - 1);
}

function coilIn({ lower, upper, share }: Output): Coil | undefined {
  const [a, b] = [coilOf(lower), coilOf(upper)];
  return a && b ? coilBetween(a, b, share) : (a ?? b);
}

const wetSplit = (unit: UnitModel, coil: Coil, at: CoilAt): Pick<UnitOutput, 'sensible' | 'latent'> =>
  coilOutput(coil, at) ?? unresolved('out-of-range', `candidates.${unit.id}.rows`);

/** Without a coil to go by, the sheet's sensible share or the usual one: neither flow nor humidity is heard. */
function byShare(sheet: Output, { capacity }: CoilAt, usual: Corrections): Pick<UnitOutput, 'sensible' | 'latent'> {
  const share = betweenRows(sheet, (r) => r.sensibleShare) ?? usual.sensibleShare;
  return { sensible: capacity * share, latent: capacity * (1 - share) };
}

type HeatingOutput = {
  readonly capacity: number;
  readonly power: number;
  readonly sheet: number;
  readonly thin: number;
  readonly loss: number;
  readonly ratedFlow: number | undefined;
};
type HeatingAt = Pick<UnitAt, 'outdoor' | 'pressure'>;

/** Heat a unit gives at an outdoor temperature, W, and the steps to it. Ends the enclosing attempt outside its sheet. */
export const heatingAt = (
  unit: UnitModel,
  at: HeatingAt & Pick<UnitAt, 'speed'>,
  corrections: HeatingCorrections,
): HeatingOutput => heatingOf(readSheet(unit, 'heating', at.speed, at.outdoor), at, corrections);

/** A reading of the sheet with altitude and frost counted. */
export function heatingOf(
  found: Output,
  { outdoor, pressure }: HeatingAt,
  { altitudeShare, frostLoss }: HeatingCorrections,
): HeatingOutput {
  const thin = altitudeFactor(pressure, altitudeShare);
  const { defrostCounted } = found.share < 0.5 ? found.lower : found.upper;
  const loss = defrostCounted ? 0 : defrostLoss(outdoor, frostLoss);
  return {
    capacity: found.capacity * thin * (1 - loss),
    power: found.power * (1 - 0.15 * loss),
    sheet: found.capacity,
    thin,
    loss,
    ratedFlow: betweenRows(found, (r) => r.airflow),
  };
}

/** Capacity against sea level: a share of the density that is missing. */
export const altitudeFactor = (pressure: number, share: number): number =>
  1 - share * (1 - pressure / standardPressure(0));
