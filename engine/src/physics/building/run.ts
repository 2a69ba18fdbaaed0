import { inZone, isGiven, type Layout, type State, type Work } from './layout.ts';
import { type RowRecord, recordStep, stepBuilding } from './run.kernel.ts';
import { convection1, face1, face2, fastNear, modeSlots, near, radiation1, slabSlots } from './slabSlots.ts';
import { finishWalls } from './step.kernel.ts';
import type { WeatherSteps } from './weatherSteps.ts';

/** Where a run begins: °C of the zones (all alike, or by id with a rest), of the outdoor faces, and kg/kg. */
export type Start = {
  readonly inside: number;
  readonly zones?: Readonly<Record<string, number>>;
  readonly outside: number;
  readonly humidity: number;
};

/** W/K through a slab, face to face, once it has settled. */
function steadyConductance(l: Layout, i: number): number {
  const { constants, firstMode } = l.slab;
  let remembered = constants[i * slabSlots + fastNear] ?? 0;
  for (let m = firstMode[i] ?? 0; m < (firstMode[i + 1] ?? 0); m++)
    remembered += (l.mode.q1[m] ?? 0) ** 2 / (1 - (l.mode.decay[m] ?? 0));
  return (constants[i * slabSlots + near] ?? 0) - remembered;
}

/** A state in which every wall has the steady profile between the temperatures on its two sides. */
export function startState(l: Layout, start: Start): State {
  const floats = (n: number): Float64Array => new Float64Array(n);
  const n = 2 * l.zones;
  const zoneAt = l.zoneIds.map((id) => start.zones?.[id] ?? start.inside);
  const slab = l.slab.constants.slice();
  for (let i = 0; i < l.slabs; i++) {
    const at = i * slabSlots;
    const other = l.slab.zone2[i] ?? 0;
    const kind = l.slab.kind2[i];
    const inside = zoneAt[l.slab.zone1[i] ?? 0] ?? start.inside;
    const beyond = kind === inZone ? zoneAt[other] : kind === isGiven ? l.given[other * l.rows] : undefined;
    slab[at + face2] = beyond ?? start.outside;
    // The inside face lies between its zone and what is beyond, as far as film and wall have it.
    const inner = (slab[at + convection1] ?? 0) + (slab[at + radiation1] ?? 0);
    const wall = steadyConductance(l, i);
    slab[at + face1] = (inner * inside + wall * (slab[at + face2] ?? 0)) / (inner + wall);
  }
  const state = {
    t: floats(n).map((_, v) => zoneAt[v >> 1] ?? start.inside),
    free: floats(n),
    slab,
    modes: steadyModes(l, slab),
    heat: floats(l.systems),
    control: new Int32Array(l.systems),
    humidity: floats(l.zones).fill(start.humidity),
    buffer: floats(l.zones).fill(start.humidity),
    dried: floats(l.zones),
    work: roomToWork(l),
  };
  finishWalls(l, state);
  return state;
}

/** Every mode at rest between its slab's faces. */
function steadyModes({ mode: of, slab: { firstMode }, slabs }: Layout, slab: Float64Array): Float64Array {
  const modes = new Float64Array(of.decay.length * modeSlots);
  for (let i = 0; i < slabs; i++)
    for (let m = firstMode[i] ?? 0; m < (firstMode[i + 1] ?? 0); m++) {
      const [one = 0, two = 0, left = 0] = [of.q1[m], of.q2[m], of.decay[m]];
      const drawn = one * (slab[i * slabSlots + face1] ?? 0) + two * (slab[i * slabSlots + face2] ?? 0);
      modes.set([left, one, two, drawn / (1 - left)], m * modeSlots);
    }
  return modes;
}

const columnsOf = ({ work, ...own }: State): (Float64Array | Int32Array)[] => [
  ...Object.values(own),
  ...Object.values(work),
];

/** Puts a state of a layout in the place of another of the same layout. */
export function copyState(from: State, into: State): void {
  const columns = columnsOf(into);
  columnsOf(from).forEach((x, i) => {
    columns[i]?.set(x);
  });
}

/** Room to calculate in; shares of systems without ducts never change. */
function roomToWork(l: Layout): Work {
  const floats = (n: number): Float64Array => new Float64Array(n);
  const n = 2 * l.zones;
  return {
    matrix: floats(l.order.size),
    response: floats(l.systems * n),
    radiation: floats(l.zones),
    outdoorFlow: floats(l.zones),
    exchange: floats(l.zones * l.zones),
    carries: floats(l.zones * l.zones),
    walls: floats(l.zones * l.zones),
    share: l.control.share.slice(),
    heatMost: floats(l.systems),
    coolMost: floats(l.systems),
    ductLevel: new Int32Array(l.ducts.count),
    ductToNext: floats(l.ducts.count),
    ductRunning: floats(l.ducts.count),
    drying: floats(l.zones),
    coilRatio: floats(l.zones),
    small: floats(l.systems * l.systems),
    smallRhs: floats(l.systems),
    sensed: floats(l.systems),
    heatAim: floats(l.systems),
    coolAim: floats(l.systems),
    vapourMatrix: floats(l.zones * l.zones),
    vapourDry: floats(l.zones * l.zones),
    vapourRhs: floats(l.zones),
    vapourGiven: floats(l.zones),
    vapourFixed: new Int32Array(l.zones),
    held: new Int32Array(l.systems),
    heldOf: Int32Array.of(-1, -2, 0),
  };
}

export type RunOptions = {
  /** Rows to run before the record begins, from the end of the weather. */
  readonly warmUp: number;
  /** Hears how many rows are done, some hundred times; throwing from it ends the run. */
  readonly tell?: (done: number, total: number) => void;
};

/** Runs all rows of the weather from a state, after a warm-up over its last rows, and records each row's means. */
export function runBuilding(l: Layout, s: State, w: WeatherSteps, options: RunOptions): RowRecord {
  const { rows, zones, systems, perRow } = l;
  const record: RowRecord = {
    heating: new Float64Array(rows * systems),
    cooling: new Float64Array(rows * systems),
    temperature: new Float64Array(rows * zones),
    humidity: new Float64Array(rows * zones),
    latent: new Float64Array(rows * zones),
  };
  const warm = options.warmUp * perRow;
  const start = (Math.ceil(options.warmUp / rows) * rows - options.warmUp) * perRow;
  for (let i = 0; i < warm; i++) stepBuilding(l, s, w, start + i);
  const told = Math.max(1, Math.floor(rows / 100));
  for (let row = 0; row < rows; row++) {
    for (let j = 0; j < perRow; j++) {
      stepBuilding(l, s, w, row * perRow + j);
      recordStep(l, s, record, row);
    }
    if (options.tell && (row + 1) % told === 0) options.tell(row + 1, rows);
  }
  return record;
}
