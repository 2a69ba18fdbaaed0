// Source: OR-Library and textbook instances with proved optima, and cases by hand. See README.md and the files.
import { bestOfSheet, cutBars, packSheets, type SheetJob } from '@kneewall/engine/physics';
import { checker } from '../src/checker.ts';
import { type How, type Row, row, type ValidationSource } from '../src/row.ts';
import gcut from './gcut_1_4.json' with { type: 'json' };
import oneDimensional from './one_dimensional.json' with { type: 'json' };
import { type BarsCase, readPacking, type SheetResult, type SheetsCase } from './readPacking.ts';
import { readText } from './readText.ts';
import { barFaults, sheetFaults } from './recut.ts';
import more from './sheets_and_triplets.json' with { type: 'json' };

const id = 'packing';
const check = checker(id);

/** Beyond what a screen waits for: proof is asked for here. A count, the same on every machine. */
const effort = { joins: 60_000_000, nodes: 4000 };

/** Some instances give their kerf in their name only. */
const kerfOf = (c: BarsCase): number => c.kerf ?? Number(/_kerf_(\d+(?:\.\d+)?)$/.exec(c.name)?.[1] ?? 0);

/** Its gap has to be closed where an instance is one of ours; of a case file it is told, and how many between bound and plan. */
function gapRows(name: string, what: string, found: number, bound: number, told: boolean, known: boolean): Row[] {
  const truth = { source: id, case: name, unit: '', tolerance: 0, known: 'computed' } as const;
  return [
    ...(known ? [] : [row({ ...truth, field: what, low: bound, high: found }, found)]),
    row({ ...truth, field: `${what} above the bound`, low: 0, high: told ? found : 0 }, found - bound),
  ];
}

function barRows(c: BarsCase, told: boolean): Row[] {
  const lengths = c.lengths ?? c.items ?? [];
  const pieces = lengths.map((length, i) => ({ id: `piece ${i}`, length, count: c.demand?.[i] ?? 1 }));
  const job = {
    pieces,
    stock: [{ id: 'bar', length: c.capacity }],
    kerf: kerfOf(c),
    remnantLeast: 0,
    linearToo: c.lp_bound !== undefined,
  };
  const plan = cutBars(job);
  const said = plan.problems.map((p) => `${p.at.join('/')}: ${p.code}`);
  if (said.length > 0) throw new Error(`${c.name}: ${said.join('; ')}`);
  const known: How = c.how_known?.startsWith('looked up') ? 'looked up' : 'computed';
  return [
    ...(c.optimum === undefined ? [] : [check(c.name, 'bars', '', c.optimum, 0, plan.bars.length, known)]),
    ...gapRows(c.name, 'bars', plan.bars.length, plan.bound, told, c.optimum !== undefined),
    ...(c.lp_bound === undefined
      ? []
      : [check(c.name, 'programme over all patterns', '', c.lp_bound, 1e-6, plan.linear)]),
    check(c.name, 'broken promises when cut', '', 0, 0, barFaults(job, plan)),
  ];
}

function sheetRows(c: SheetsCase, turns: boolean, expected: SheetResult | undefined, told: boolean): Row[] {
  const pieces = c.pieces.map((p) => ({ id: String(p.id), width: p.w, height: p.h, count: p.count ?? 1, turns }));
  const stock = [{ id: 'sheet', width: c.sheet.w, height: c.sheet.h }];
  const linear = expected?.lp_bound_over_all_guillotine_patterns;
  const job: SheetJob = {
    pieces,
    stock,
    kerf: c.kerf ?? 0,
    trim: c.trim ?? 0,
    remnantLeast: 0,
    effort,
    linearToo: linear !== undefined,
  };
  const plan = packSheets(job);
  const said = plan.problems.map((p) => `${p.at.join('/')}: ${p.code}`);
  if (said.length > 0) throw new Error(`${c.name}: ${said.join('; ')}`);
  const name = `${c.name}, ${turns ? 'turning' : 'no turning'}`;
  const value = expected?.best_value_one_sheet_unlimited_copies_area;
  const fewest = expected?.min_sheets_guillotine;
  return [
    ...(fewest === undefined ? [] : [check(name, 'sheets', '', fewest, 0, plan.sheets.length)]),
    ...gapRows(name, 'sheets', plan.sheets.length, plan.bound, told, fewest !== undefined),
    ...(linear === undefined ? [] : [check(name, 'programme over all patterns', '', linear, 1e-6, plan.linear)]),
    ...(value === undefined ? [] : [check(name, 'best value of one sheet', '', value, 0, bestValue(c, turns))]),
    check(name, 'broken promises when cut', '', 0, 0, sheetFaults(job, plan)),
  ];
}

const bestValue = (c: SheetsCase, turns: boolean): number =>
  bestOfSheet(
    c.pieces.map((p) => ({ width: p.w, height: p.h, value: p.w * p.h, turns })),
    c.sheet.w,
    c.sheet.h,
    c.kerf ?? 0,
  );

const rowsOf = (file: unknown, told: boolean): Row[] =>
  readPacking(file).flatMap((c) => {
    if (!('sheet' in c)) return barRows(c, told);
    // A file that expects only one of the two is asked only that one.
    const all = c.results?.no_turning === undefined && c.results?.turning_allowed === undefined;
    return [
      ...(all || c.results?.no_turning ? sheetRows(c, false, c.results?.no_turning, told) : []),
      ...(all || c.results?.turning_allowed ? sheetRows(c, true, c.results?.turning_allowed, told) : []),
    ];
  });

/** By hand: four squares fill a sheet, and the saw may take what is there but no more; the pinwheel goes on one sheet only without the rule of through cuts. */
const byHand = {
  instances: [
    {
      name: 'four squares',
      sheet: { w: 10, h: 10 },
      pieces: [{ id: 0, w: 5, h: 5, count: 4 }],
      results: { no_turning: { min_sheets_guillotine: 1 }, turning_allowed: { min_sheets_guillotine: 1 } },
    },
    // The kerf between, and the edges taken off: 5 + 1 + 5 within 11 within 13.
    {
      name: 'four squares, kerf 1, trim 1',
      sheet: { w: 13, h: 13 },
      pieces: [{ id: 0, w: 5, h: 5, count: 4 }],
      kerf: 1,
      trim: 1,
      results: { no_turning: { min_sheets_guillotine: 1 } },
    },
    {
      name: 'four squares, kerf 1.1, trim 1',
      sheet: { w: 13, h: 13 },
      pieces: [{ id: 0, w: 5, h: 5, count: 4 }],
      kerf: 1.1,
      trim: 1,
      results: { no_turning: { min_sheets_guillotine: 4 } },
    },
    {
      name: 'pinwheel',
      sheet: { w: 10, h: 10 },
      pieces: [
        [6, 4],
        [4, 6],
        [6, 4],
        [4, 6],
        [2, 2],
      ].map(([w, h], i) => ({ id: i, w, h })),
      results: { no_turning: { min_sheets_guillotine: 2 } },
    },
  ],
};

export const source: ValidationSource = {
  id,
  title: 'Cutting bars and sheets: instances with proved optima',
  measure: () => [oneDimensional, gcut, more, byHand].flatMap((file) => rowsOf(file, false)),
  measureCase: (file, _beside, name = 'case') =>
    rowsOf(typeof file === 'string' ? readText(file, name.replace(/\.\w+$/, '')) : file, true),
};
