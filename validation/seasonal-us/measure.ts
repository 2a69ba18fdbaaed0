// Source: AHRI 210/240 and 10 CFR 430 subpart B appendices M and M1 (from memory); the examples are computed. See README.md.
import {
  assumedFrostTest,
  btuPerWattHour,
  coolingLoad,
  defrostCredit,
  designRequirements,
  heatingLoadOfCooling,
  inBtuPerWattHour,
  olderHeatingLoad,
  type Season,
  type SeasonRow,
  singleSpeedCooling,
  type UsRegion,
  usCoolingBins,
  usCoolingSeason,
  usHeatingBins,
  usHeatingSeason,
  usRegions,
  usTests,
} from '@kneewall/engine/season';
import { type Printed, printedTable } from '../src/printedTable.ts';
import { type How, type Row, row, type ValidationSource } from '../src/row.ts';
import { measureCase } from './caseFile.ts';
import {
  coolingSpeeds,
  heatingSpeeds,
  single,
  singleLine,
  singleTests,
  variableCooling,
  variableHeating,
} from './machines.ts';

const id = 'seasonal-us';
const relative = 1e-5;
const heat = (watts: number): number => watts * btuPerWattHour;

const near = (
  name: string,
  field: string,
  unit: string,
  expected: number,
  ours: number,
  known: How = 'computed',
): Row => row({ source: id, case: name, field, unit, expected, tolerance: relative * Math.abs(expected), known }, ours);
/** A printed cell: one part in 100,000, or half of its last digit. */
const cell = (name: string, field: string, unit: string, { value, half }: Printed, ours: number): Row =>
  row(
    {
      source: id,
      case: name,
      field,
      unit,
      expected: value,
      tolerance: Math.max(half, relative * Math.abs(value)),
      known: 'computed',
    },
    ours,
  );

const table = (name: string) => printedTable(new URL(`./${name}.csv`, import.meta.url));
const none: Printed = { value: Number.NaN, half: 0 };
const rowOf = (season: Season, index: number): SeasonRow => {
  const found = season.rows[index];
  if (!found) throw new Error(`the season has no bin ${index}`);
  return found;
};
const sums = (name: string, season: Season, load: number, input: number, backup: number, ratio: number): Row[] => [
  near(name, 'sum of load', 'Btu/h', load, heat(season.heat)),
  near(name, 'sum of input', 'Wh/h', input, season.input),
  near(name, 'sum of backup', 'Wh/h', backup, season.backup),
  near(name, 'seasonal factor', 'Btu/Wh', ratio, inBtuPerWattHour(season.ratio)),
];

/** The bins themselves: each column as printed, and its sum, which guards the memory. */
function bins(): Row[] {
  const printed = table('heating-bins');
  const regions = ['I', 'II', 'III', 'IV', 'V', 'VI'] as const satisfies readonly UsRegion[];
  const each = regions.flatMap((region): Row[] => {
    const ours = usHeatingBins(region);
    const truth = { source: id, case: `region ${region}`, unit: '', tolerance: 1e-12, known: 'from memory' as const };
    const off = printed.map((p, i) => Math.abs((p[region] ?? none).value - (ours[i]?.share ?? 0)));
    return [
      row({ ...truth, field: 'largest miss of a bin', expected: 0 }, Math.max(...off)),
      row(
        { ...truth, field: 'sum of its bins', expected: 1 },
        ours.reduce((a, b) => a + b.share, 0),
      ),
    ];
  });
  const load = heatingLoadOfCooling(10_000, usRegions.IV.slope, 'IV');
  const heated = usHeatingBins('IV').reduce((a, b) => a + (load(b.outdoor) > 0 ? b.share : 0), 0);
  return [
    ...each,
    row(
      {
        source: id,
        case: 'cooling',
        field: 'sum of its bins',
        unit: '',
        expected: 1,
        tolerance: 1e-12,
        known: 'from memory',
      },
      usCoolingBins.reduce((a, b) => a + b.share, 0),
    ),
    near('region IV since 2023', 'share of hours with a load', '', 0.757, heated),
  ];
}

function formulas(): Row[] {
  const frost = assumedFrostTest(singleTests);
  const credit = (apart: number, longest: number, expected: number): Row =>
    near(
      `defrost ${apart} h apart, ${longest} h at most`,
      'credit',
      '',
      expected,
      defrostCredit(apart, longest),
      'from memory',
    );
  const requirement = designRequirements(singleTests.mild.capacity, 'IV');
  return [
    near('single speed, no frost test', 'capacity at 35 °F', 'Btu/h', 26_784, heat(frost.capacity)),
    near('single speed, no frost test', 'power at 35 °F', 'W', 2752.09, frost.power),
    near('single speed, region IV', 'least design requirement', 'Btu/h', 35_000, heat(requirement.least)),
    near('single speed, region IV', 'largest design requirement', 'Btu/h', 70_000, heat(requirement.most)),
    near('EER 12.5, Cd 0.20', 'SEER', 'Btu/Wh', 11.25, singleSpeedCooling(12.5, 0.2)),
    near('EER 12.5, Cd 0.25', 'SEER', 'Btu/Wh', 10.9375, singleSpeedCooling(12.5, 0.25)),
    credit(1.5, 12, 1.03),
    credit(12, 12, 1),
    credit(6.75, 24, 1.015),
  ];
}

function singleSpeedExample(): Row[] {
  const name = 'single speed (a)';
  const season = usHeatingSeason(single, olderHeatingLoad(35_000 / btuPerWattHour, 'IV'), usHeatingBins('IV'));
  const each = table('single-speed-heating').flatMap((p, i): Row[] => {
    const ours = rowOf(season, i);
    const at = `${name}, ${p['outdoor °F']?.value} °F`;
    return [
      cell(at, 'load', 'Btu/h', p['load Btu/h'] ?? none, heat(ours.load)),
      cell(at, 'capacity', 'Btu/h', p['capacity Btu/h'] ?? none, heat(ours.capacity)),
      cell(at, 'power', 'W', p['power W'] ?? none, singleLine(ours.outdoor).power),
      cell(at, 'running', '', p.running ?? none, ours.running),
      cell(at, 'factor', '', p.factor ?? none, ours.factor),
      cell(at, 'input', 'Wh/h', p['input Wh/h'] ?? none, ours.weight * ours.input),
      cell(at, 'backup', 'Wh/h', p['backup Wh/h'] ?? none, ours.weight * ours.backup),
    ];
  });
  const since = usHeatingSeason(
    single,
    heatingLoadOfCooling(34_000 / btuPerWattHour, usRegions.IV.slope, 'IV'),
    usHeatingBins('IV'),
    { off: (-10 - 32) / 1.8, on: (0 - 32) / 1.8 },
  );
  return [
    ...each,
    ...sums(name, season, 10_746.3125, 1207.9793, 109.1759, 8.15873),
    ...sums('single speed (b), cut-out', since, 11_785.522, 1203.4535, 399.7082, 7.35142),
  ];
}

const caseOf = (row: SeasonRow, low: number): number => (row.load <= low ? 1 : row.load < row.capacity ? 2 : 3);
const romans: Readonly<Record<string, number>> = { I: 1, II: 2, III: 3 };
const casesIn = (lines: string): number[] => lines.split(' ').map((c) => romans[c] ?? 0);

/** What one line of the worked examples says of the three speeds, and which case it is. */
function speedCells(
  at: string,
  p: ReturnType<typeof table>[number],
  ours: SeasonRow,
  speeds: typeof heatingSpeeds,
  expected: number,
): Row[] {
  const low = speeds.low(ours.outdoor).capacity;
  const between = speeds.between(ours.outdoor).capacity;
  return [
    cell(at, 'load', 'Btu/h', p['load Btu/h'] ?? none, heat(ours.load)),
    cell(at, 'capacity, low', 'Btu/h', p['low Btu/h'] ?? none, heat(low)),
    cell(at, 'capacity, between', 'Btu/h', p['between Btu/h'] ?? none, heat(between)),
    cell(at, 'capacity, most', 'Btu/h', p['most Btu/h'] ?? none, heat(ours.capacity)),
    cell(at, 'case', '', { value: expected, half: 0 }, caseOf(ours, low)),
  ];
}

function variableHeatingExample(): Row[] {
  const name = 'variable speed, heating';
  const load = heatingLoadOfCooling(24_000 / btuPerWattHour, usRegions.IV.slopeVariable, 'IV');
  const season = usHeatingSeason(variableHeating, load, usHeatingBins('IV'));
  const cases = casesIn('I I I II II II II III III III III III III');
  const each = table('variable-speed-heating').flatMap((p, i): Row[] => {
    const ours = rowOf(season, i);
    const at = `${name}, ${p['outdoor °F']?.value} °F`;
    return [
      ...speedCells(at, p, ours, heatingSpeeds, cases[i] ?? 0),
      cell(at, 'efficiency', '', p['efficiency W/W'] ?? none, ours.delivered / ours.input),
      cell(at, 'input', 'Wh/h', p['input Wh/h'] ?? none, ours.weight * ours.input),
      cell(at, 'backup', 'Wh/h', p['backup Wh/h'] ?? none, ours.weight * ours.backup),
    ];
  });
  const frost = heatingSpeeds.low(usTests.frost);
  const between = heatingSpeeds.between;
  const slope = (of: 'capacity' | 'power') => (between(10)[of] - between(0)[of]) / 18;
  return [
    ...each,
    near(name, 'low speed at 35 °F', 'Btu/h', 7240, heat(frost.capacity)),
    near(name, 'low speed at 35 °F', 'W', 592, frost.power),
    near(name, 'slope between', 'Btu/h °F', 196.657872, heat(slope('capacity'))),
    near(name, 'slope between', 'W/°F', 1.648838, slope('power')),
    ...sums(name, season, 7740.4656, 651.9616, 137.9398, 9.79928),
  ];
}

function variableCoolingExample(): Row[] {
  const name = 'variable speed, cooling';
  const season = usCoolingSeason(variableCooling, coolingLoad(24_000 / btuPerWattHour, 0.93), usCoolingBins);
  const cases = casesIn('I I I II II II II III');
  const each = table('variable-speed-cooling').flatMap((p, i): Row[] => {
    const ours = rowOf(season, i);
    const at = `${name}, ${p['outdoor °F']?.value} °F`;
    return [
      ...speedCells(at, p, ours, coolingSpeeds, cases[i] ?? 0),
      cell(at, 'efficiency', 'Btu/Wh', p['efficiency Btu/Wh'] ?? none, heat(ours.delivered / ours.input)),
      cell(at, 'cooling', 'Btu/h', p['delivered Btu/h'] ?? none, ours.weight * heat(ours.delivered)),
      cell(at, 'input', 'Wh/h', p['input Wh/h'] ?? none, ours.weight * ours.input),
    ];
  });
  return [
    ...each,
    near(name, 'sum of cooling', 'Btu/h', 7966.7793, heat(season.heat)),
    near(name, 'sum of input', 'Wh/h', 439.74013, season.input),
    near(name, 'seasonal factor', 'Btu/Wh', 18.11702, inBtuPerWattHour(season.ratio)),
  ];
}

export const source: ValidationSource = {
  id,
  title: 'Seasonal figures by the US bin method',
  measure: () => [
    ...bins(),
    ...formulas(),
    ...singleSpeedExample(),
    ...variableHeatingExample(),
    ...variableCoolingExample(),
  ],
  measureCase,
};
