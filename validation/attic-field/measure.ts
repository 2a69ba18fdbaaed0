// Source: Parker & Sherwin, Comparative Summer Attic Thermal Performance of Six Roof Constructions, 1998. See README.md.
import { evaluate, runJob } from '@kneewall/engine';
import type { Project } from '@kneewall/project';
import { type Row, row, type ValidationSource } from '../src/row.ts';

const id = 'attic-field';
const is = (value: number) => ({ value, known: 'measured' as const });

/** A house of ours in the place of the tests: hot clear day, ceiling of R-19, attic vented at a share of its ceiling. */
function house(absorptance: number, airChanges: number): Project {
  return {
    schema: 1,
    site: {
      latitude: is(28.4),
      longitude: is(-80.8),
      elevation: is(10),
      coldNight: is(4),
      hotAfternoon: is(33.3),
      normals: Object.fromEntries(
        [16, 17, 19, 22, 25, 27, 28, 28, 27, 24, 20, 17].map((mean, i) => [
          `m${i + 1}`,
          { month: is(i + 1), mean: is(mean), dailyRange: is(8), humidity: is(0.75), wind: is(3), clearness: is(0.5) },
        ]),
      ),
    },
    house: {
      floorArea: is(140),
      roof: { pitch: is(22.6), absorptance: is(absorptance), uValue: is(5), airChanges: is(airChanges) },
    },
  };
}

type Days = { day: { attic?: number[] } };

function atticOf(project: Project): number[] {
  const job = evaluate(project, {}).wanted.find((j) => j.kind === 'loads/days');
  if (!job) throw new Error('the days are not wanted');
  const { day } = runJob(job, { blob: () => undefined, tell: () => {} }) as Days;
  return day.attic ?? [];
}

/** The attic that wires and people are judged by before any day has been run. */
function atOnce(project: Project): number {
  const most = evaluate(project, {}).plan.trades.loads?.atticDay;
  return most?.ok ? most.value.likely : Number.NaN;
}

const outdoorMost = 33.3;

function measure(): Row[] {
  const dark = atticOf(house(0.92, 3));
  const white = atticOf(house(0.32, 3));
  const most = Math.max(...dark);
  const check = (field: string, unit: string, low: number, high: number, known: Row['known'], ours: number): Row =>
    row({ source: id, case: 'July day', field, unit, low, high, tolerance: 0, known }, ours);
  return [
    check('dark shingles, vents 1:300, peak over outdoor air', 'K', 20, 27, 'looked up', most - outdoorMost),
    check('the same at once, by the steady sums', 'K', 20, 27, 'looked up', atOnce(house(0.92, 3)) - outdoorMost),
    check('hour of the peak', 'h', 13, 16, 'looked up', dark.indexOf(most) + 0.5),
    // White metal of reflectance 0.68: 39.0 °C at 33.3 °C outdoors; houses side by side scatter by 2 K.
    check('white metal, peak over outdoor air', 'K', 3.7, 7.7, 'looked up', Math.max(...white) - outdoorMost),
    check(
      'coolest hour of the night over the coolest outdoor air',
      'K',
      -4,
      3,
      'from memory',
      Math.min(...dark) - (outdoorMost - 9.6),
    ),
  ];
}

export const source: ValidationSource = { id, title: 'Attics as measured', measure };
