import { existsSync } from 'node:fs';
import { canonicalJson, emptyProject, type Project, schemaPaths } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import {
  coldMemo,
  consequenceWords,
  evaluate,
  type Finding,
  holdPointWords,
  type Plan,
  statusWords,
  wordFormulas,
} from '../src/index.ts';
import { evaluateFormula } from '../src/physics/index.ts';
import { atticWork } from '../src/plan/cautions.ts';
import { trades } from '../src/trades.ts';
import { demo, demoNames, frozen } from './demos.ts';

const files = 'finder,design,findings,result,teller,messages,materials,tasks,readings,sources'.split(',');

describe.each(trades.map((t) => [t.id, t] as const))('the trade %s', (id, trade) => {
  it('has the shape of every trade', () => {
    const folder = new URL(`../src/${id}/`, import.meta.url);
    for (const file of files) expect(existsSync(new URL(`${file}.ts`, folder)), `${file}.ts`).toBe(true);
  });

  it('names what it reads, and each source with title and standing', () => {
    expect(trade.reads.length).toBeGreaterThan(0);
    for (const source of Object.values(trade.sources)) {
      expect(source.title.length).toBeGreaterThan(5);
      expect(source.standing.length).toBeGreaterThan(3);
    }
  });
});

/** What is wrong with a finding. Said in words at once, since a plan has thousands of these and each variant its plan. */
function* faultsOf(finding: Finding, plan: Plan): Generator<string> {
  const { id, status, consequence, holdPoint, source } = finding;
  if (!statusWords.includes(status)) yield `${id}: status ${status}`;
  if (!consequenceWords.includes(consequence)) yield `${id}: consequence ${consequence}`;
  if (!holdPointWords.includes(holdPoint)) yield `${id}: hold point ${holdPoint}`;
  for (const words of [finding.what, finding.why, finding.mend])
    if (!(words.length > 8) || /NaN|undefined|Infinity|\[object/.test(words)) yield `${id}: says "${words}"`;
  if (plan.sources[source] === undefined) yield `${id}: source ${source}`;
  if (status === 'unknown') {
    if (finding.because === undefined) yield `${id}: unknown without because`;
    if (finding.value !== undefined) yield `${id}: unknown, and has a value`;
    return;
  }
  const value = typeof finding.value === 'number' ? finding.value : finding.value?.likely;
  const last = plan.workings[finding.working]?.at(-1);
  if (last === undefined) yield `${id} has no working`;
  else if (!Object.is(last.value, value)) yield `${id}: working ends in ${last.value}, the finding has ${value}`;
}

function checkWorkings(plan: Plan): void {
  for (const [name, steps] of Object.entries(plan.workings))
    for (const step of steps) {
      const at = `${name}, ${step.symbol}`;
      expect(step.source === 'project' || plan.sources[step.source] !== undefined, `${at}: source ${step.source}`).toBe(
        true,
      );
      if (wordFormulas.includes(step.formula)) continue;
      const shown = evaluateFormula(step.formula, step.inputs);
      expect(Math.abs(shown - step.value), `${at}: ${step.formula}`).toBeLessThanOrEqual(
        1e-12 * Math.max(1, Math.abs(step.value)),
      );
    }
}

function checkPlan(plan: Plan): void {
  expect(plan.findings.flatMap((f) => [...faultsOf(f, plan)])).toEqual([]);
  expect(new Set(plan.findings.map((f) => f.id)).size).toBe(plan.findings.length);
  const uncautioned = plan.tasks.filter((t) => t.place === 'attic' && !atticWork.every((c) => t.cautions.includes(c)));
  expect(
    uncautioned.map((t) => t.id),
    'work in the attic without its cautions',
  ).toEqual([]);
  expect(notFinite(plan), 'every number in the plan is finite').toBeUndefined();
}

/** Where in a value a number that is not finite stands first. */
function notFinite(value: unknown): string | undefined {
  if (typeof value === 'number') return Number.isFinite(value) ? undefined : '';
  if (value === null || typeof value !== 'object' || ArrayBuffer.isView(value)) return undefined;
  for (const [key, below] of Object.entries(value)) {
    const at = notFinite(below);
    if (at !== undefined) return `.${key}${at}`;
  }
  return undefined;
}

describe.each(demoNames)('the plan of %s', (name) => {
  it('is complete, sourced, and every working ends in its finding', () => {
    const { plan } = evaluate(demo(name), {});
    expect(plan.findings.length).toBeGreaterThan(20);
    checkPlan(plan);
    checkWorkings(plan);
  });

  it('is the same to the last bit twice, and changes nothing it was given', () => {
    const project = frozen(demo(name));
    expect(canonicalJson(evaluate(project, {}).plan)).toBe(canonicalJson(evaluate(project, {}).plan));
  });

  it('settles: air, equipment and loads agree to 1e-11', () => {
    const { agreement } = evaluate(demo(name), {}).plan;
    expect(agreement.converged).toBe(true);
    expect(agreement.residual).toBeLessThanOrEqual(1e-11);
    expect(agreement.sweeps).toBeLessThanOrEqual(60);
  });

  it('reads in both systems of units without moving a number', () => {
    const us = evaluate(demo(name), {}, { units: 'us' }).plan;
    const si = evaluate(demo(name), {}, { units: 'si' }).plan;
    expect(si.findings.map((f) => f.value)).toEqual(us.findings.map((f) => f.value));
    expect(si.findings.map((f) => f.what)).not.toEqual(us.findings.map((f) => f.what));
  });

  // One memo for all of them: each evaluation does only what hangs on the part that is gone, or back.
  const [whole, memo] = [demo(name), coldMemo()];

  it.each(schemaPaths())('stands up with every %s taken out', (path) => {
    const { plan } = evaluate(without(whole, path.split('.')), {}, { memo });
    expect(
      plan.findings.every((f) => f.because !== 'fault'),
      'no fault',
    ).toBe(true);
    checkPlan(plan);
  });

  it.each(schemaPaths().filter((_, i) => i % 80 === 0))(
    'is the same from the start with every %s taken out',
    (path) => {
      const cut = without(whole, path.split('.'));
      expect(canonicalJson(evaluate(cut, {}, { memo }).plan)).toBe(canonicalJson(evaluate(cut, {}).plan));
    },
  );
});

describe('an empty project', () => {
  it('evaluates, says what is missing, and claims nothing', () => {
    const { plan } = evaluate(emptyProject, {});
    checkPlan(plan);
    expect(plan.findings.length).toBeGreaterThan(0);
    expect(plan.findings.every((f) => f.status === 'unknown')).toBe(true);
    expect(plan.findings.every((f) => (f.needs ?? []).length > 0)).toBe(true);
  });
});

/** A document with one schema path taken out wherever it occurs; `*` stands for every entry of a map. What has none stays the same object. */
function without(project: Project, keys: readonly string[]): Project {
  const cut = (tree: unknown, [key, ...rest]: readonly string[]): unknown => {
    if (key === undefined || tree === null || typeof tree !== 'object') return tree;
    const entries = Object.entries(tree);
    const kept = rest.length === 0 && key !== '*' ? entries.filter(([k]) => k !== key) : entries;
    const left = kept.map(([k, below]) => [k, key === '*' || k === key ? cut(below, rest) : below] as const);
    const same = left.length === entries.length && left.every(([k, below]) => Object.is(below, Reflect.get(tree, k)));
    return same ? tree : Object.fromEntries(left);
  };
  return cut(project, keys) as Project;
}
