import { alternatingFrom, directFor, type OwnInverter } from './inverter.ts';
import { type PowerSystem, tableFrom, tableLength } from './system.ts';

/** Recorded demand in equal steps: W of sun at the bus, W of load, W of direct current that load takes, °C round the cells. */
export type ReplayDemand = {
  readonly sun: Float64Array;
  readonly load: Float64Array;
  readonly direct: Float64Array;
  readonly ambient: Float64Array;
  /** Of a step. */
  readonly hours: number;
};

/** A system with what its steps of one length have in common. */
export type ReplaySystem = {
  readonly system: PowerSystem;
  /** kWh below which the battery gives nothing, by whole degrees. */
  readonly floor: Float64Array;
  /** Share of the cells' distance from their surroundings that is left after a step. */
  readonly decay: number;
  /** kWh of the battery between which the generator starts and stops. */
  readonly startAt: number;
  readonly stopAt: number;
  /** W for each kWh that it may give and take in a step, and kWh for each W that goes in and out. */
  readonly givesRate: number;
  readonly takesRate: number;
  readonly intoStore: number;
  readonly fromStore: number;
  /** Share of what goes in and out that warms the cells. */
  readonly lostIn: number;
  readonly lostOut: number;
};

/** Demand with the direct current it takes through the inverter, the same for every size of arrays and battery. */
export const replayDemand = (demand: Omit<ReplayDemand, 'direct'>, inverter: OwnInverter): ReplayDemand => ({
  ...demand,
  direct: demand.load.map((watts) => directFor(Math.min(watts, inverter.most), inverter)),
});

/** A system laid out for steps of so many hours. */
export function replaySystem(system: PowerSystem, hours: number): ReplaySystem {
  const { battery, generator } = system;
  const floor = battery.capacity.map((share) => battery.energy * (1 - share * (1 - battery.kept)));
  const { oneWay } = battery;
  const perHour = 1000 / hours;
  return {
    system,
    floor,
    decay: Math.exp((-battery.conductance * hours * 3600) / battery.heatCapacity),
    startAt: generator.startBelow * battery.energy,
    stopAt: generator.stopAbove * battery.energy,
    givesRate: perHour * oneWay,
    takesRate: perHour / oneWay,
    intoStore: oneWay / perHour,
    fromStore: 1 / (oneWay * perHour),
    lostIn: 1 - oneWay,
    lostOut: 1 / oneWay - 1,
  };
}

/** W that a step may lack, or the generator give, before it counts. */
const nothing = 1;

/** Places of what a replay counts: steps with the generator running, and steps in which something goes short. */
export const generatorSteps = 0;
export const shortSteps = 1;

/**
 * Demand replayed through a system whose arrays are `arrays` times as large, from a battery so full (share) and as warm
 * as its surroundings. Counts steps into `out`; the same rules as `stepPower`, step by step, with what does not hang on
 * the battery worked out before. The demand is taken as it is: a flat battery does not cool the house here. Allocates
 * nothing.
 */
export function replay(
  own: ReplaySystem,
  demand: ReplayDemand,
  arrays: number,
  share: number,
  out: Float64Array,
): void {
  const { battery, inverter, charger, generator } = own.system;
  const { sun: suns, load: loads, direct: directs, ambient: ambients } = demand;
  const { energy, conductance, charge: chargeAt, discharge: dischargeAt } = battery;
  const { floor: floorAt, decay, startAt, stopAt, givesRate, takesRate, intoStore, fromStore, lostIn, lostOut } = own;
  const { idle, most } = inverter;
  const { rated } = generator;
  let stored = energy * share;
  let cell = ambients[0]!;
  let running = false;
  let [turned, wanting] = [0, 0];
  for (let i = 0; i < loads.length; i++) {
    const sun = suns[i]! * arrays;
    const load = loads[i]!;
    const at = Math.max(0, Math.min(tableLength - 1, Math.floor(cell - tableFrom)));
    const gives = Math.max(0, Math.min(dischargeAt[at]!, (stored - floorAt[at]!) * givesRate));
    const takes = Math.max(0, Math.min(chargeAt[at]!, (energy - stored) * takesRate));
    const spare = sun + gives - idle;
    let direct = directs[i]!;
    let wanted = Math.min(load, most);
    let bus = sun;
    let carried = 0;
    if (rated > 0) {
      const short = load > 0 && (load > most || spare < direct);
      running = stored < startAt || short || (running && stored < stopAt && takes > 0);
      if (running) {
        carried = Math.min(load, rated);
        const room = Math.max(0, takes - Math.max(0, sun - idle));
        const charging = Math.min(charger.most, rated - carried, room / charger.kept);
        bus = sun + charging * charger.kept;
        wanted = Math.min(load - carried, most);
        direct = wanted > 0 ? directFor(wanted, inverter) : 0;
        if (carried + charging > nothing) turned++;
      }
    }
    let drawn = 0;
    if (bus + gives > idle) {
      drawn = idle + direct;
      if (drawn > bus + gives) {
        drawn = bus + gives;
        wanted = alternatingFrom(drawn - idle, inverter);
      }
    } else wanted = 0;
    if (load - carried - wanted > nothing) wanting++;
    let warming = 0;
    if (cell < battery.heaterBelow) warming = Math.max(0, Math.min(battery.heater, bus + gives - drawn));
    const over = bus - drawn - warming;
    let heat = warming;
    if (over > 0) {
      const charge = Math.min(over, takes);
      stored += charge * intoStore;
      heat += charge * lostIn;
    } else {
      const discharge = Math.min(-over, gives);
      stored -= discharge * fromStore;
      heat += discharge * lostOut;
    }
    const settled = ambients[i]! + heat / conductance;
    cell = settled + (cell - settled) * decay;
  }
  out[generatorSteps] = turned;
  out[shortSteps] = wanting;
}
