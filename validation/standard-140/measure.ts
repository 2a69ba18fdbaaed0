// Source: ANSI/ASHRAE Standard 140, building thermal envelope tests; ranges and cases from memory. See README.md.
import { readdirSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gunzipSync } from 'node:zlib';
import { readWeather, rowsOfYear, skyTemperatures } from '@kneewall/engine';
import {
  compileBuilding,
  heatHeld,
  intake,
  type Layout,
  type RowRecord,
  runBuilding,
  type State,
  startState,
  stepBuilding,
  type WeatherSteps,
  weatherSteps,
} from '@kneewall/engine/physics';
import { type Row, row, type ValidationSource } from '../src/row.ts';
import { buildingOf } from './building.ts';
import { type CaseFile, caseFile } from './caseFile.ts';

const id = 'standard-140';
const folder = fileURLToPath(new URL('./cases/', import.meta.url));
const stepSeconds = 900;
/** Hours of the year's end that settle the walls before the year counts. */
const warmUp = 60 * 24;

const kept = new Map<string, WeatherSteps>();

/** Weather of a case, from a TMY3 or other year file beside it, also compressed. */
function weatherOf(file: CaseFile, beside: string): WeatherSteps {
  const path = resolve(beside, file.weather);
  const key = `${path} ${JSON.stringify(file.site)}`;
  const found = kept.get(key);
  if (found) return found;
  const bytes = readFileSync(path);
  const text = (path.endsWith('.gz') ? gunzipSync(bytes) : bytes).toString('utf8');
  const { value, problems } = readWeather(text, {}, undefined);
  if (!value) throw new RangeError(`${file.weather}: ${problems[0]?.mend ?? 'not a weather file'}`);
  const { latitude, longitude, elevation, timeZone } = file.site;
  const year = { ...value, latitude, longitude, elevation, timeZone };
  const made = weatherSteps(rowsOfYear(year, skyTemperatures(year)), stepSeconds);
  kept.set(key, made);
  return made;
}

/** Runs one case file; the first row is the certificate that every step's heat adds up. */
export function measureCase(given: unknown, beside: string): Row[] {
  const read = caseFile.safeParse(given);
  if (!read.success) {
    const [first] = read.error.issues;
    throw new RangeError(`case file: ${first?.path.join('.')}: ${first?.message}`);
  }
  const file = read.data;
  const weather = weatherOf(file, beside);
  const layout = compileBuilding(buildingOf(file), weather);
  const state = startState(layout, { inside: 20, outside: 0, humidity: 0.004 });
  const record = runBuilding(layout, state, weather, { warmUp });
  const unclosed = worstUnclosed(layout, state, weather);
  const closure = { source: id, case: file.case, field: 'heat-unclosed', unit: '', known: 'computed' as const };
  return [
    row({ ...closure, expected: 0, tolerance: 1e-9 }, unclosed),
    ...file.outputs.map((o) => outputRow(file, o, record, unclosed < 1e-9)),
  ];
}

/** Largest share of a step's heat that is not accounted for, over a week in the middle of the year and one in winter. */
function worstUnclosed(l: Layout, s: State, w: WeatherSteps): number {
  const ways = new Float64Array(5);
  let worst = 0;
  for (const first of [0, 182]) {
    for (let i = 0; i < 7 * 96; i++) {
      const step = first * 96 + i;
      const before = heatHeld(l, s);
      stepBuilding(l, s, w, step);
      intake(l, s, w, step % l.count, ways);
      const stored = (heatHeld(l, s) - before) / l.stepSeconds;
      const flows = ways.reduce((a, x) => a + Math.abs(x), 0);
      worst = Math.max(worst, Math.abs(stored - ways.reduce((a, x) => a + x, 0)) / Math.max(flows, 1));
    }
  }
  return worst;
}

type Output = CaseFile['outputs'][number];

function outputRow(file: CaseFile, o: Output, record: RowRecord, closes: boolean): Row {
  const { ours, unit } = readOff(o.field, record);
  const truth = {
    source: id,
    case: file.case,
    field: o.field,
    unit,
    ...(o.expected === undefined ? {} : { expected: o.expected }),
    ...(o.low === undefined ? {} : { low: o.low }),
    ...(o.high === undefined ? {} : { high: o.high }),
    tolerance: o.tolerance ?? 0,
    known: 'from memory' as const,
  };
  if (o.expected !== undefined || o.low !== undefined || o.high !== undefined) return row(truth, ours);
  // Nothing to hold it against: it counts where every step's heat adds up.
  return { ...truth, ours, error: 0, ok: closes && Number.isFinite(ours) };
}

function readOff(field: Output['field'], record: RowRecord): { ours: number; unit: string } {
  const sum = (x: Float64Array): number => x.reduce((a, b) => a + b, 0) / 1e6;
  // All zones together, hour by hour.
  const top = (x: Float64Array): number => {
    const systems = x.length / 8760;
    const hours = Array.from({ length: 8760 }, (_, h) => x.subarray(h * systems, (h + 1) * systems));
    return (
      hours.reduce(
        (a, hour) =>
          Math.max(
            a,
            hour.reduce((sum, y) => sum + y, 0),
          ),
        0,
      ) / 1e3
    );
  };
  const t = record.temperature;
  const values = {
    'annual-heating': () => ({ ours: sum(record.heating), unit: 'MWh' }),
    'annual-cooling': () => ({ ours: sum(record.cooling), unit: 'MWh' }),
    'peak-heating': () => ({ ours: top(record.heating), unit: 'kW' }),
    'peak-cooling': () => ({ ours: top(record.cooling), unit: 'kW' }),
    highest: () => ({ ours: t.reduce((a, b) => Math.max(a, b), -1e9), unit: '°C' }),
    lowest: () => ({ ours: t.reduce((a, b) => Math.min(a, b), 1e9), unit: '°C' }),
    mean: () => ({ ours: t.reduce((a, b) => a + b, 0) / t.length, unit: '°C' }),
  };
  return values[field]();
}

export const source: ValidationSource = {
  id,
  title: 'Standard 140, building thermal envelope',
  measure: () =>
    readdirSync(folder)
      .filter((f) => f.endsWith('.json'))
      .sort()
      .flatMap((f) => measureCase(JSON.parse(readFileSync(`${folder}${f}`, 'utf8')), folder)),
  measureCase,
};
