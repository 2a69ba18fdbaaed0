import { type DuctHeat, type DuctSurroundings, ductHeatOf } from '../air/ductHeat.ts';
import { named, type PlacedFlows, placedSolver } from '../air/flows.ts';
import type { AirModel } from '../air/result.ts';
import { standardAir } from '../equipment/coil/fit.ts';
import { extraFanHeat } from '../equipment/fanHeat.ts';
import type { BlowerModel, UnitModel } from '../equipment/result.ts';
import { unitAt } from '../equipment/unitAt.ts';
import { atticTemperature } from '../loads/attic.ts';
import type { AtticModel } from '../loads/result.ts';
import { airDensity, humidityRatio } from '../physics/air/index.ts';
import { heatOfAir } from '../physics/flow/index.ts';
import { attempt, type Outcome, required } from '../plan/outcome.ts';
import type { TradeResults } from '../results.ts';
import { type AgreedPoint, type Agreement, noAgreement } from './agreement.ts';

/** What the rooms are kept at: °C winter and summer, and the summer's relative humidity. */
export type Setpoints = { readonly heating: number; readonly cooling: number; readonly humidity: number };

type Mode = 'heating' | 'cooling';

/** What the trades designed: of the air its ducts alone. */
export type Designed = Pick<TradeResults, 'climate' | 'loads' | 'equipment'> & { readonly ducts: Outcome<AirModel> };

/** Everything one design point hangs on. */
type Point = {
  readonly mode: Mode;
  readonly unit: UnitModel;
  readonly blower: BlowerModel;
  readonly air: AirModel;
  readonly attic: AtticModel;
  readonly outdoor: number;
  readonly indoor: number;
  readonly indoorHumidity: number;
  readonly pressure: number;
  readonly solve: ReturnType<typeof placedSolver>;
  readonly heat: (flows: PlacedFlows, at: DuctSurroundings) => DuctHeat;
};

/** The exchanged state. Flow m³/s; temperatures °C. */
type State = { readonly flow: number; readonly entering: number; readonly leaving: number; readonly attic: number };

const sweepsMost = 60;
const residualWanted = 1e-11;
/** Share of each proposed change that is taken; the loop contracts by itself, this keeps odd duct systems calm. */
const damping = 0.8;
/**
 * Lets air, equipment and loads agree at the cold night and the hot hour: flow, entering and leaving air, duct gains
 * and the attic's temperature exchanged until nothing moves by more than 1e-11 of its scale. Capped at 60 sweeps;
 * a point that has not settled is reported so and used by nobody as if it had.
 */
export function agree(results: Designed, setpoints: Setpoints): Agreement {
  const heating = agreePoint(results, setpoints, 'heating');
  const cooling = agreePoint(results, setpoints, 'cooling');
  const points = [heating, cooling].flatMap((p) => (p.ok ? [p.value] : []));
  if (points.length === 0) return noAgreement;
  return {
    converged: points.every((p) => p.converged),
    sweeps: Math.max(...points.map((p) => p.sweeps)),
    residual: Math.max(...points.map((p) => p.residual)),
    ...(heating.ok ? { heating: heating.value.point } : {}),
    ...(cooling.ok ? { cooling: cooling.value.point } : {}),
  };
}

type Settled = {
  readonly point: AgreedPoint;
  readonly converged: boolean;
  readonly sweeps: number;
  readonly residual: number;
};

function agreePoint(results: Designed, setpoints: Setpoints, mode: Mode): Outcome<Settled> {
  return attempt(() => settle(pointFrom(results, setpoints, mode)));
}

function pointFrom({ climate, loads, equipment, ducts }: Designed, setpoints: Setpoints, mode: Mode): Point {
  const chosen = equipment.candidates[required(equipment.chosen)];
  if (!chosen) throw new Error('assert: the chosen unit is not among the candidates');
  const pressure = required(climate.pressure);
  const model = required(ducts);
  const indoor = mode === 'heating' ? setpoints.heating : setpoints.cooling;
  return {
    mode,
    unit: chosen.unit,
    blower: chosen.blower,
    air: model,
    attic: required(loads.attic),
    outdoor: mode === 'heating' ? required(climate.night).outdoor.likely : outdoorAtPeak(climate, loads),
    indoor,
    indoorHumidity:
      mode === 'heating'
        ? required(climate.night).humidityRatio
        : humidityRatio({ t: indoor, rh: setpoints.humidity }, pressure),
    pressure,
    solve: placedSolver(),
    heat: ductHeatOf(model),
  };
}

/** Outdoor air at the hour in which the house needs most cooling. */
function outdoorAtPeak(climate: TradeResults['climate'], loads: TradeResults['loads']): number {
  const { hour } = required(loads.cooling);
  const day = required(climate.day);
  return day.hours.find((h) => h.hour === hour)?.outdoor ?? day.outdoor.likely;
}

function settle(point: Point): Settled {
  let state = losslessStart(point);
  let residual = Number.POSITIVE_INFINITY;
  let sweeps = 0;
  while (sweeps < sweepsMost && residual > residualWanted) {
    const next = sweep(point, state);
    residual = distance(state, next);
    state = blend(state, next, residual > residualWanted ? damping : 1);
    sweeps++;
  }
  return { point: describe(point, state), converged: residual <= residualWanted, sweeps, residual };
}

/** Nominal flow and ducts that neither lose nor leak. */
function losslessStart(point: Point): State {
  const still = { supplyTemperature: point.indoor, returnTemperature: point.indoor };
  const { flow } = flowsOf(point, still);
  const attic = atticTemperature(point.attic, {
    mode: point.mode,
    outdoor: point.outdoor,
    indoor: point.indoor,
    ductHeat: 0,
  });
  return { flow, entering: point.indoor, leaving: leavingAir(point, flow, point.indoor), attic };
}

/** One exchange: flows at these temperatures, the unit at that flow, the ducts in that attic, the attic with those ducts. */
function sweep(point: Point, state: State): State {
  const flows = flowsOf(point, { supplyTemperature: state.leaving, returnTemperature: state.entering });
  const ducts = point.heat(flows, surroundings(point, state));
  const attic = atticTemperature(point.attic, {
    mode: point.mode,
    outdoor: point.outdoor,
    indoor: point.indoor,
    ductHeat: ducts.heatToAttic,
  });
  return { flow: flows.flow, entering: ducts.entering, leaving: leavingAir(point, flows.flow, ducts.entering), attic };
}

function flowsOf(point: Point, at: { supplyTemperature: number; returnTemperature: number }) {
  const flows = point.solve(point.air, at);
  return flows.converged
    ? flows
    : required<typeof flows>({ ok: false, because: 'not-converged', paths: ['routes.ducts'] });
}

const surroundings = (point: Point, state: State) => ({
  leaving: state.leaving,
  indoor: point.indoor,
  attic: state.attic,
  below: belowTemperature(point),
  returnTemperature: state.entering,
});

/** A crawl space lies half way between rooms and outdoors. Source: `coupling.below`. */
const belowTemperature = (point: Point): number => (point.indoor + point.outdoor) / 2;

const unitOutput = (point: Point, flow: number, entering: number) =>
  required(
    unitAt(point.unit, {
      mode: point.mode,
      outdoor: point.outdoor,
      entering,
      enteringHumidity: point.indoorHumidity,
      flow,
      pressure: point.pressure,
      speed: 'most',
      fanHeat: (ratedFlow) => extraFanHeat(point.blower, fanNow(point, flow, entering), ratedFlow),
    }),
  );

const fanNow = (point: Point, flow: number, entering: number) => ({
  table: point.air.blower,
  flow,
  thinness: airDensity(entering, point.pressure) / standardAir,
});

/** Sensible heat over the air's heat capacity flow, up in winter and down in summer. */
function leavingAir(point: Point, flow: number, entering: number): number {
  const { sensible } = unitOutput(point, flow, entering);
  const rise = sensible / (flow * airDensity(entering, point.pressure) * heatOfAir);
  return point.mode === 'heating' ? entering + rise : entering - rise;
}

/** The largest change, flow as a share, temperatures against 10 K. */
const distance = (a: State, b: State): number =>
  Math.max(
    Math.abs(b.flow - a.flow) / Math.max(a.flow, 1e-9),
    Math.abs(b.entering - a.entering) / 10,
    Math.abs(b.leaving - a.leaving) / 10,
    Math.abs(b.attic - a.attic) / 10,
  );

const blend = (a: State, b: State, share: number): State => ({
  flow: a.flow + share * (b.flow - a.flow),
  entering: a.entering + share * (b.entering - a.entering),
  leaving: a.leaving + share * (b.leaving - a.leaving),
  attic: a.attic + share * (b.attic - a.attic),
});

function describe(point: Point, state: State): AgreedPoint {
  const flows = flowsOf(point, { supplyTemperature: state.leaving, returnTemperature: state.entering });
  const ducts = point.heat(flows, surroundings(point, state));
  const unit = unitOutput(point, flows.flow, ducts.entering);
  return {
    mode: point.mode,
    outdoor: point.outdoor,
    indoor: point.indoor,
    attic: state.attic,
    flow: flows.flow,
    staticPressure: flows.staticPressure,
    entering: ducts.entering,
    leaving: state.leaving,
    enteringHumidity: point.indoorHumidity,
    sensible: unit.sensible,
    latent: unit.latent,
    delivered: point.mode === 'heating' ? ducts.delivered : -ducts.delivered,
    registers: ducts.registers,
    sections: named(point.air, flows).sections,
    supplyLeak: ducts.supplyLeak,
    returnLeak: ducts.returnLeak,
    ductHeatToAttic: ducts.heatToAttic,
  };
}
