import type { Layout, State } from './layout.ts';
import { type RowRecord, recordStep, stepBuilding } from './run.kernel.ts';
import type { WeatherSteps } from './weatherSteps.ts';

/** A state in which everything is at one temperature, °C, and one humidity, kg/kg. */
export function startState(l: Layout, temperature: number, humidity: number): State {
  const floats = (n: number): Float64Array => new Float64Array(n);
  const n = 2 * l.zones;
  const modes = l.mode.decay.map(
    (decay, m) => (((l.mode.q1[m] ?? 0) + (l.mode.q2[m] ?? 0)) * temperature) / (1 - decay),
  );
  return {
    t: floats(n).fill(temperature),
    free: floats(n),
    face1: floats(l.slabs).fill(temperature),
    face2: floats(l.slabs).fill(temperature),
    modes,
    heat: floats(l.systems),
    control: new Int32Array(l.systems),
    humidity: floats(l.zones).fill(humidity),
    buffer: floats(l.zones).fill(humidity),
    dried: floats(l.zones),
    work: {
      matrix: floats(n * n),
      response: floats(l.systems * n),
      history1: floats(l.slabs),
      history2: floats(l.slabs),
      known2: floats(l.slabs),
      inverse11: floats(l.slabs),
      inverse12: floats(l.slabs),
      inverse22: floats(l.slabs),
      conv1: floats(l.slabs),
      rad1: floats(l.slabs),
      conv2: floats(l.slabs),
      rad2: floats(l.slabs),
      air2: floats(l.slabs),
      sky2: floats(l.slabs),
      outdoorFlow: floats(l.zones),
      exchange: floats(l.zones * l.zones),
      small: floats(l.systems * l.systems),
      smallRhs: floats(l.systems),
      vapourMatrix: floats(l.zones * l.zones),
      vapourDry: floats(l.zones * l.zones),
      vapourRhs: floats(l.zones),
      vapourFixed: new Int32Array(l.zones),
      held: new Int32Array(l.systems),
      heldOf: Int32Array.of(-1, -2, 0),
    },
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
