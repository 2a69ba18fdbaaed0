import type { DuctHeat, DuctSurroundings } from '../air/ductHeat.ts';
import type { AirModel } from '../air/ductwork.ts';
import { named, type PlacedFlows, type placedSolver, type SolvedFlows } from '../air/flows.ts';
import { standardAir } from '../equipment/coil/fit.ts';
import { extraFanHeat } from '../equipment/fanHeat.ts';
import type { BlowerModel, UnitModel, UnitSpeed } from '../equipment/result.ts';
import { unitAt } from '../equipment/unitAt.ts';
import { airDensity } from '../physics/air/index.ts';
import { heatOfAir } from '../physics/flow/index.ts';
import { required } from '../plan/outcome.ts';
import type { AgreedPoint } from './agreement.ts';

/** Everything one state of house, ducts and unit hangs on. */
export type Point = {
  readonly mode: AgreedPoint['mode'];
  readonly unit: UnitModel;
  readonly blower: BlowerModel;
  readonly air: AirModel;
  /** °C of the attic when ducts put so many W into it. */
  readonly attic: (ductHeat: number) => number;
  readonly outdoor: number;
  readonly indoor: number;
  readonly indoorHumidity: number;
  readonly pressure: number;
  readonly solve: ReturnType<typeof placedSolver>;
  readonly heat: (flows: PlacedFlows, at: DuctSurroundings) => DuctHeat;
  readonly speed: UnitSpeed;
  /** W that strips behind the coil put into the air. */
  readonly strips: number;
  /** Scaled change below which it counts as settled; 1e-11 for a plan. */
  readonly residual: number;
};

/** The exchanged state. Flow m³/s; temperatures °C. */
type State = { readonly flow: number; readonly entering: number; readonly leaving: number; readonly attic: number };

const sweepsMost = 60;
/** Share of each proposed change that is taken; the loop contracts by itself, this keeps odd duct systems calm. */
const damping = 0.8;
export type Settled = {
  readonly point: AgreedPoint;
  /** W that the unit draws, strips apart, and the flows by name. */
  readonly power: number;
  readonly flows: SolvedFlows;
  readonly converged: boolean;
  readonly sweeps: number;
  readonly residual: number;
};

/**
 * Flow, entering and leaving air, duct gains and the attic exchanged until nothing moves by more than its residual
 * says, or 60 sweeps are done. Ends the enclosing attempt where flows do not settle or the sheet does not reach.
 */
export function settle(point: Point): Settled {
  let state = losslessStart(point);
  let residual = Number.POSITIVE_INFINITY;
  let sweeps = 0;
  while (sweeps < sweepsMost && residual > point.residual) {
    const next = sweep(point, state);
    residual = distance(state, next);
    state = blend(state, next, residual > point.residual ? damping : 1);
    sweeps++;
  }
  return { ...describe(point, state), converged: residual <= point.residual, sweeps, residual };
}

/** Nominal flow and ducts that neither lose nor leak. */
function losslessStart(point: Point): State {
  const still = { supplyTemperature: point.indoor, returnTemperature: point.indoor };
  const { flow } = flowsOf(point, still);
  const attic = point.attic(0);
  return { flow, entering: point.indoor, leaving: leavingAir(point, flow, point.indoor), attic };
}

/** One exchange: flows at these temperatures, the unit at that flow, the ducts in that attic, the attic with those ducts. */
function sweep(point: Point, state: State): State {
  const flows = flowsOf(point, { supplyTemperature: state.leaving, returnTemperature: state.entering });
  const ducts = point.heat(flows, surroundings(point, state));
  const attic = point.attic(ducts.heatToAttic);
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
      speed: point.speed,
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
  const warmed = point.strips / (flow * airDensity(entering, point.pressure) * heatOfAir);
  return (point.mode === 'heating' ? entering + rise : entering - rise) + warmed;
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

function describe(point: Point, state: State): Pick<Settled, 'point' | 'power' | 'flows'> {
  const flows = flowsOf(point, { supplyTemperature: state.leaving, returnTemperature: state.entering });
  const ducts = point.heat(flows, surroundings(point, state));
  const unit = unitOutput(point, flows.flow, ducts.entering);
  const all = named(point.air, flows);
  const agreed: AgreedPoint = {
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
    sections: all.sections,
    supplyLeak: ducts.supplyLeak,
    returnLeak: ducts.returnLeak,
    ductHeatToAttic: ducts.heatToAttic,
  };
  return { point: agreed, power: unit.power, flows: all };
}
