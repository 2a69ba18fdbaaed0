// Source: the plain bin method over a measured year's hours (computed outside the project). See README.md.
import { binsOfHours } from '@kneewall/engine';
import { meetingPoint, plainSeason } from '@kneewall/engine/season';
import { type Printed, printedTable } from '../src/printedTable.ts';
import { type Row, row, type ValidationSource } from '../src/row.ts';
import { weatherYear } from '../weather-files/files.ts';

const id = 'seasonal-bins';
const near = (name: string, field: string, unit: string, expected: number, ours: number): Row =>
  row({ source: id, case: name, field, unit, expected, tolerance: 1e-5 * Math.abs(expected), known: 'computed' }, ours);
const cell = (name: string, field: string, unit: string, { value, half }: Printed, ours: number): Row =>
  row(
    {
      source: id,
      case: name,
      field,
      unit,
      expected: value,
      tolerance: Math.max(half, 1e-5 * Math.abs(value)),
      known: 'computed',
    },
    ours,
  );

/** An invented house and unit, °C and W. */
const load = (t: number): number => Math.max(0, 190 * (16 - t));
const capacity = (t: number): number => 6000 + 130 * t;
const cop = (t: number): number => 3.1 + 0.06 * t;
const warmer = { 18: 922, 21: 606, 24: 448, 27: 452, 30: 265, 33: 206, 36: 29, 39: 5 } as const;
const none: Printed = { value: Number.NaN, half: 0 };

function measure(): Row[] {
  const year = weatherYear('tmy3_725650_denver_intl_co.csv', 'tmy3');
  const bins = binsOfHours(year.dryBulb, year.stepSeconds / 3600);
  const season = plainSeason(bins, { load, capacity, cop, least: capacity }, 0.25);
  const each = printedTable(new URL('./denver.csv', import.meta.url)).flatMap((p, i): Row[] => {
    const ours = season.rows[i];
    const name = `bin ${p['bin °C']?.value} °C`;
    if (!ours) throw new Error(`the season has no ${name}`);
    return [
      cell(name, 'bin', '°C', p['bin °C'] ?? none, ours.outdoor),
      cell(name, 'hours', 'h', p.hours ?? none, ours.weight),
      cell(name, 'load', 'kW', p['load kW'] ?? none, ours.load / 1000),
      cell(name, 'capacity', 'kW', p['capacity kW'] ?? none, ours.capacity / 1000),
      cell(name, 'efficiency', '', p.cop ?? none, ours.delivered / ours.input / ours.factor),
      cell(name, 'running', '', p.running ?? none, ours.running),
      cell(name, 'factor', '', p.factor ?? none, ours.factor),
      cell(name, 'compressor', 'kW', p['compressor kW'] ?? none, ours.input / 1000),
      cell(name, 'backup', 'kW', p['backup kW'] ?? none, ours.backup / 1000),
    ];
  });
  const hours = (centre: number): number => bins.find((b) => b.centre === centre)?.hours ?? 0;
  return [
    ...each,
    near('year', 'heat', 'kWh', 12_571.54, season.heat / 1000),
    near('year', 'compressor', 'kWh', 4581.1994, season.input / 1000),
    near('year', 'backup', 'kWh', 143.28, season.backup / 1000),
    near('year', 'seasonal factor', '', 2.660937, season.ratio),
    near(
      'year',
      'balance point',
      '°C',
      -9.25,
      meetingPoint((t) => capacity(t) - load(t), -30, 16),
    ),
    ...Object.entries(warmer).map(([centre, h]) => near(`bin ${centre} °C`, 'hours', 'h', h, hours(Number(centre)))),
    near(
      'year',
      'hours',
      'h',
      8760,
      bins.reduce((a, b) => a + b.hours, 0),
    ),
  ];
}

export const source: ValidationSource = { id, title: 'Seasonal figure by plain temperature bins of a year', measure };
