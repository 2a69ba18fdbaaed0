// Source: EN 14825, hours by bin and the method (from memory); the example is computed. See README.md.
import {
  type EuropeanClimate,
  europeanBins,
  europeanSeason,
  type Season,
  type SeasonRow,
} from '@kneewall/engine/season';
import { type How, type Row, row, type ValidationSource } from '../src/row.ts';
import { measureCase } from './caseFile.ts';

const id = 'seasonal-eu';
const near = (
  name: string,
  field: string,
  unit: string,
  expected: number,
  ours: number,
  known: How = 'computed',
): Row => row({ source: id, case: name, field, unit, expected, tolerance: 1e-5 * Math.abs(expected), known }, ours);

/** An invented unit: °C, W at highest speed, coefficient of performance, W at lowest speed. */
const points = (
  [
    [-22, 3800, 1.4, 1800],
    [-15, 4600, 1.8, 1900],
    [-10, 5200, 2.1, 2000],
    [-7, 5600, 2.35, 2100],
    [2, 6400, 3.4, 2300],
    [7, 7400, 4.6, 2600],
    [12, 8000, 5.6, 2900],
  ] as const
).map(([outdoor, most, cop, least]) => ({ outdoor, most, cop, least }));

const season = (climate: EuropeanClimate): Season =>
  europeanSeason(
    points.filter((p) => climate === 'colder' || p.outdoor >= -15),
    climate,
    6000,
    0.25,
  );

function totals(climate: EuropeanClimate, heat: number, electricity: number, backup: number, ratio: number): Row[] {
  const ours = season(climate);
  return [
    near(climate, 'heat', 'kWh', heat, ours.heat / 1000),
    near(climate, 'electricity', 'kWh', electricity, (ours.input + ours.backup) / 1000),
    near(climate, 'of which backup', 'kWh', backup, ours.backup / 1000),
    near(climate, 'seasonal factor', '', ratio, ours.ratio),
  ];
}

const hours = (climate: EuropeanClimate, expected: number): Row =>
  near(
    climate,
    'hours of the season',
    'h',
    expected,
    europeanBins(climate).reduce((a, b) => a + b.hours, 0),
    'from memory',
  );

/** Of one bin; cells as printed to six decimals. */
const printed: Readonly<Record<string, (r: SeasonRow) => number>> = {
  load: (r) => r.load / 1000,
  backup: (r) => r.backup / 1000,
  running: (r) => r.running,
  efficiency: (r) => r.delivered / r.input,
};
function bin(climate: EuropeanClimate, outdoor: number, expected: Readonly<Record<string, number>>): Row[] {
  const found = season(climate).rows.find((r) => r.outdoor === outdoor);
  return Object.entries(expected).map(([field, value]) =>
    row(
      {
        source: id,
        case: `${climate}, ${outdoor} °C`,
        field,
        unit: field === 'load' || field === 'backup' ? 'kW' : '',
        expected: value,
        tolerance: 1e-6,
        known: 'computed',
      },
      found ? (printed[field]?.(found) ?? Number.NaN) : Number.NaN,
    ),
  );
}

export const source: ValidationSource = {
  id,
  title: 'Seasonal figures by the European bin method',
  measure: () => [
    hours('average', 4910),
    hours('colder', 6446),
    ...totals('average', 12_393.6923, 3552.7836, 13.3487, 3.488446),
    ...totals('colder', 14_788.5789, 5248.4688, 136.5233, 2.817694),
    ...bin('average', -10, { load: 6, backup: 0.8, efficiency: 2.1 }),
    ...bin('average', 7, { load: 2.076923, running: 0.798817, efficiency: 4.368639 }),
    ...bin('average', 12, { load: 0.923077, running: 0.318302, efficiency: 4.645623 }),
    ...bin('average', 15, { running: 0.074925, efficiency: 4.766134 }),
    ...bin('colder', -22, { backup: 2.2 }),
    ...bin('colder', -15, { load: 4.894737, backup: 0.294737 }),
    ...bin('colder', 2, { running: 0.961098, efficiency: 3.366934 }),
  ],
  measureCase,
};
