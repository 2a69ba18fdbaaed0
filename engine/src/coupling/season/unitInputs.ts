import type { AirResult } from '../../air/result.ts';
import { coilOf } from '../../equipment/coil/fit.ts';
import type { Candidate, UnitModel, UnitRow } from '../../equipment/result.ts';
import { rowsOf } from '../../equipment/sheet.ts';
import { unitAt } from '../../equipment/unitAt.ts';
import type { CandidateInput } from '../../equipment/unitModel.ts';
import type { HouseInputs } from '../../loads/dynamic/houseInputs.ts';
import { humidityRatio } from '../../physics/air/index.ts';
import { type Outcome, required } from '../../plan/outcome.ts';
import type { Scenario } from '../../plan/scenario.ts';
import type { DuctsInputs } from '../ducted/ductworks.ts';

/** A unit as the year needs it. */
export type UnitInputs = {
  readonly model: UnitModel;
  /** W of backup strips, 0 for none. */
  readonly strips: number;
  /** °C below which it does not run; undefined where the sheet does not say. */
  readonly outdoorLeast?: number;
  /** Sensible cooling at its most, W, by rising outdoor temperature; none where the sheet shows no cooling. */
  readonly sensible: readonly { readonly outdoor: number; readonly watts: number }[];
};

/** The unit with what its year needs of the rest of its sheet, at the flow its ducts give. */
export function unitInputs(
  model: UnitModel,
  input: CandidateInput | undefined,
  house: HouseInputs,
  flow: number,
  s: Scenario,
): UnitInputs {
  const outdoorLeast = input && s.maybe(input.outdoorLeast);
  return {
    model,
    sensible: sensibleMost(model, house, flow),
    strips: input ? s.of(input.electrics.strips) : 0,
    ...(outdoorLeast === undefined ? {} : { outdoorLeast }),
  };
}

/** Sensible cooling with air as it is wanted indoors, at each outdoor temperature that the sheet states. */
function sensibleMost(model: UnitModel, { wanted, pressure }: HouseInputs, flow: number): UnitInputs['sensible'] {
  const enteringHumidity = humidityRatio({ t: wanted.cooling, rh: wanted.humidity }, pressure);
  const outdoors = new Set(model.rows.filter((r) => r.mode === 'cooling' && r.speed === 'most').map((r) => r.outdoor));
  return [...outdoors]
    .sort((a, b) => a - b)
    .map((outdoor) => {
      const at = {
        mode: 'cooling',
        outdoor,
        entering: wanted.cooling,
        enteringHumidity,
        flow,
        pressure,
        speed: 'most',
      } as const;
      return { outdoor, watts: required(unitAt(model, at)).sensible };
    });
}

/** Share of the full flow at the lowest speed where the sheet states no airflow. Source: `coupling.slow-fan` (common practice). */
const slowFan = 0.6;

const mean = (rows: readonly UnitRow[], of: (r: UnitRow) => number | undefined): number | undefined => {
  const values = rows.map(of).filter((x) => x !== undefined);
  return values.length > 0 ? values.reduce((a, x) => a + x, 0) / values.length : undefined;
};

/**
 * The ducts with the speeds of the unit that blows into them. The fan follows the unit's speed in a line between the
 * lowest and the highest rows of its sheet. Ends the enclosing attempt where flows or the sheet are missing.
 */
export function ductsInputs(air: Pick<AirResult, 'model' | 'flows'>, { unit }: Candidate): DuctsInputs {
  const flows = required(air.flows);
  const most = rowsOf(unit, 'heating', 'most');
  const least = unit.rows.filter((r) => r.mode === 'heating' && r.speed === 'least');
  const highest = { output: required(meanOf(most)), flow: 1 };
  const full = mean(most, (r) => r.airflow);
  const slow = mean(least, (r) => r.airflow);
  const lowest = mean(least, (r) => r.capacity);
  const coil = unit.rows
    .filter((r) => r.mode === 'cooling')
    .map(coilOf)
    .find((c) => c !== undefined);
  const share = full !== undefined && slow !== undefined ? Math.min(1, slow / full) : slowFan;
  return {
    model: required(air.model),
    flows: { flow: flows.flow, sections: flows.sections, terminals: flows.terminals },
    speeds: lowest !== undefined && lowest < highest.output ? [{ output: lowest, flow: share }, highest] : [highest],
    ...(coil ? { coil } : {}),
  };
}

const meanOf = (rows: readonly UnitRow[]): Outcome<number> => {
  const value = mean(rows, (r) => r.capacity);
  return value === undefined ? { ok: false, because: 'missing', paths: ['candidates'] } : { ok: true, value };
};
