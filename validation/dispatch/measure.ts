// Source: by hand, and by a general solver. See README.md.
import { highsSolver } from '@kneewall/engine';
import { certify, dispatchProgramme, provesInfeasible } from '@kneewall/engine/physics';
import loadHighs from 'highs';
import { type How, type Row, row, type ValidationSource } from '../src/row.ts';

const id = 'dispatch';
const solve = highsSolver(await loadHighs());

type Case = {
  readonly sun: readonly number[];
  readonly load: readonly number[];
  readonly cost: readonly number[];
  readonly energy: number;
  readonly start: number;
  readonly end: number;
  readonly keptIn: number;
  readonly keptOut: number;
  readonly rate: number;
  readonly generator: number;
};

/** More than anything in the cases: no limit. */
const none = 100;
const a: Case = {
  sun: [5, 0, 1],
  load: [2, 3, 3],
  cost: [1, 1, 1],
  energy: 2,
  start: 0,
  end: 0,
  keptIn: 0.9,
  keptOut: 1,
  rate: none,
  generator: none,
};
const c: Case = {
  sun: [0, 6, 0, 0],
  load: [2, 1, 4, 3],
  cost: [1, 1, 1, 1],
  energy: 4,
  start: 1,
  end: 0.5,
  keptIn: 0.9,
  keptOut: 0.95,
  rate: 3,
  generator: 2,
};

/** One bus of the cases is two joined without loss. */
function programmeOf(x: Case) {
  const steps = x.sun.length;
  const all = (value: number): Float64Array => new Float64Array(steps).fill(value);
  return dispatchProgramme({
    steps,
    sun: Float64Array.from(x.sun),
    direct: all(0),
    load: Float64Array.from(x.load),
    battery: { ...x, floor: all(0), charge: all(x.rate), discharge: all(x.rate) },
    generator: { most: x.generator, cost: Float64Array.from(x.cost) },
    charger: { most: x.generator, kept: 1 },
    inverter: { pieces: [{ width: none, kept: 1 }], idle: 0 },
  }).programme;
}

/** The least cost, its bound and what the certificate leaves. Not a number where there is no optimum. */
function optimum(name: string, x: Case, expected: number, known: How): Row[] {
  const programme = programmeOf(x);
  const solved = solve(programme);
  const found = solved.status === 'optimal' ? certify(programme, solved.values, solved.prices) : undefined;
  const check = (field: string, truth: number, tolerance: number, ours = Number.NaN): Row =>
    row(
      { source: id, case: name, field, unit: field === 'cost' ? 'kWh' : '', expected: truth, tolerance, known },
      ours,
    );
  return [
    check('cost', expected, 1e-6 * expected, found?.cost),
    check('bound', expected, 1e-6 * expected, found?.bound),
    check('certificate', 1, 0, found?.holds ? 1 : 0),
  ];
}

/** 1 where the solver says that nothing fits, and where its prices prove it. */
function impossible(name: string, x: Case): Row[] {
  const programme = programmeOf(x);
  const solved = solve(programme);
  const said = solved.status === 'infeasible';
  const check = (field: string, ours: boolean): Row =>
    row({ source: id, case: name, field, unit: '', expected: 1, tolerance: 0, known: 'computed' }, ours ? 1 : 0);
  return [
    check('said infeasible', said),
    check('proved infeasible', said && solved.prices !== undefined && provesInfeasible(programme, solved.prices)),
  ];
}

export const source: ValidationSource = {
  id,
  title: 'Least-cost dispatch',
  measure: () => [
    ...optimum('A: one full battery', a, 3, 'computed'),
    ...optimum('B: the last hour dear', { ...a, cost: [1, 1, 2] }, 3, 'computed'),
    ...optimum('C: rates and an end', c, 5.96, 'computed'),
    ...optimum('D: hours of different cost', { ...c, generator: 3, cost: [1, 1, 3, 2] }, 10.683333333, 'computed'),
    ...impossible('E: fuller in the end than can be', { ...c, end: 1 }),
  ],
};
