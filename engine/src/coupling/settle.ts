import type { DuctHeat, DuctSurroundings } from '../air/ductHeat.ts';
import type { AirModel, DuctSection } from '../air/ductwork.ts';
import { named, type PlacedFlows, type placedSolver, type SolvedFlows } from '../air/flows.ts';
import { standardAir } from '../equipment/coil/fit.ts';
import { extraFanHeat } from '../equipment/fanHeat.ts';
import type { BlowerModel, UnitModel, UnitSpeed } from '../equipment/result.ts';
import { unitAt } from '../equipment/unitAt.ts';
import { airDensity } from '../physics/air/index.ts';
import { broyden } from '../physics/broyden.ts';
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
  /** kg/kg of the air outside the rooms, which leaking returns draw in: attics and crawl spaces that are open to the weather. */
  readonly aroundHumidity: number;
  readonly pressure: number;
  readonly solve: ReturnType<typeof placedSolver>;
  readonly heat: (flows: PlacedFlows, at: DuctSurroundings) => DuctHeat;
  readonly speed: UnitSpeed;
  /** W that strips behind the coil put into the air. */
  readonly strips: number;
  /** Scaled change below which it counts as settled; 1e-11 for a plan. */
  readonly residual: number;
};

/** The exchanged state, °C: flows, ducts and unit follow from it. */
type State = { readonly entering: number; readonly leaving: number; readonly attic: number };

const sweepsMost = 60;
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
 * Entering and leaving air and the attic, with the flows and duct gains that follow from them, exchanged until nothing
 * moves by more than its residual says, or 60 sweeps are done. Ends the enclosing attempt where flows do not settle or
 * the sheet does not reach.
 */
export function settle(point: Point): Settled {
  const at = flowsAt(point);
  let state = losslessStart(point, at);
  let residual = Number.POSITIVE_INFINITY;
  let sweeps = 0;
  const onward = broyden();
  while (sweeps < sweepsMost && residual > point.residual) {
    const next = sweep(point, at, state);
    residual = distance(state, next);
    state = residual > point.residual ? stateOf(onward(tensOf(state), tensOf(next))) : next;
    sweeps++;
  }
  return { ...describe(point, at(state), state), converged: residual <= point.residual, sweeps, residual };
}

/** Ducts that neither lose nor leak. */
function losslessStart(point: Point, at: FlowsAt): State {
  const flows = at({ leaving: point.indoor, entering: point.indoor });
  return {
    entering: point.indoor,
    leaving: leavingAir(point, flows, point.indoor),
    attic: point.attic(0),
  };
}

/** One exchange: flows at these temperatures, the unit at that flow, the ducts in that attic, the attic with those ducts. */
function sweep(point: Point, at: FlowsAt, state: State): State {
  const flows = at(state);
  const ducts = point.heat(flows, surroundings(point, state));
  const attic = point.attic(ducts.heatToAttic);
  return { entering: ducts.entering, leaving: leavingAir(point, flows, ducts.entering), attic };
}

type FlowsAt = (state: Pick<State, 'leaving' | 'entering'>) => PlacedFlows;

/** Flows at one state after the other, each begun from the one before. */
function flowsAt(point: Point): FlowsAt {
  let start: Float64Array | undefined;
  return ({ leaving, entering }) => {
    const flows = point.solve(point.air, { supplyTemperature: leaving, returnTemperature: entering }, start);
    start = flows.start;
    return flows.converged
      ? flows
      : required<typeof flows>({ ok: false, because: 'not-converged', paths: ['routes.ducts'] });
  };
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

/** kg/kg of room air with what the returns draw in outside the rooms; as much of it as its leaks are of the flow. */
function enteringHumidity({ air, indoorHumidity, aroundHumidity }: Point, { flow, start }: PlacedFlows): number {
  const outside = (x: DuctSection): boolean => x.side === 'return' && x.place !== 'inside';
  const drawn = air.sections.reduce((sum, x, i) => (outside(x) ? sum + (start[i] ?? 0) * x.leakage : sum), 0);
  return flow > 0 ? indoorHumidity + (drawn / flow) * (aroundHumidity - indoorHumidity) : indoorHumidity;
}

const unitOutput = (point: Point, flows: PlacedFlows, entering: number) =>
  required(
    unitAt(point.unit, {
      mode: point.mode,
      outdoor: point.outdoor,
      entering,
      enteringHumidity: enteringHumidity(point, flows),
      flow: flows.flow,
      pressure: point.pressure,
      speed: point.speed,
      fanHeat: (ratedFlow) => extraFanHeat(point.blower, fanNow(point, flows.flow, entering), ratedFlow),
    }),
  );

const fanNow = (point: Point, flow: number, entering: number) => ({
  table: point.air.blower,
  flow,
  thinness: airDensity(entering, point.pressure) / standardAir,
});

/** Sensible heat over the air's heat capacity flow, up in winter and down in summer. */
function leavingAir(point: Point, flows: PlacedFlows, entering: number): number {
  const { flow } = flows;
  const { sensible } = unitOutput(point, flows, entering);
  const rise = sensible / (flow * airDensity(entering, point.pressure) * heatOfAir);
  const warmed = point.strips / (flow * airDensity(entering, point.pressure) * heatOfAir);
  return (point.mode === 'heating' ? entering + rise : entering - rise) + warmed;
}

/** The largest change, against 10 K. */
const distance = (a: State, b: State): number =>
  Math.max(
    Math.abs(b.entering - a.entering) / 10,
    Math.abs(b.leaving - a.leaving) / 10,
    Math.abs(b.attic - a.attic) / 10,
  );

const tensOf = ({ entering, leaving, attic }: State): number[] => [entering / 10, leaving / 10, attic / 10];
const stateOf = ([entering = 0, leaving = 0, attic = 0]: readonly number[]): State => ({
  entering: 10 * entering,
  leaving: 10 * leaving,
  attic: 10 * attic,
});

function describe(point: Point, flows: PlacedFlows, state: State): Pick<Settled, 'point' | 'power' | 'flows'> {
  const ducts = point.heat(flows, surroundings(point, state));
  const unit = unitOutput(point, flows, ducts.entering);
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
    enteringHumidity: enteringHumidity(point, flows),
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
