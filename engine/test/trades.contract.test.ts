import { existsSync } from 'node:fs';
import { canonicalJson, emptyProject, type Project, schemaPaths } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import {
  consequenceWords,
  evaluate,
  type Finding,
  holdPointWords,
  type Plan,
  statusWords,
  wordFormulas,
} from '../src/index.ts';
import { evaluateFormula } from '../src/physics/index.ts';
import { trades } from '../src/trades.ts';
import { demo, demoNames, frozen, numbersIn } from './demos.ts';

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

function checkFinding(finding: Finding, plan: Plan): void {
  const at = finding.id;
  expect(statusWords, at).toContain(finding.status);
  expect(consequenceWords, at).toContain(finding.consequence);
  expect(holdPointWords, at).toContain(finding.holdPoint);
  for (const words of [finding.what, finding.why, finding.mend]) {
    expect(words.length, at).toBeGreaterThan(8);
    expect(words, at).not.toMatch(/NaN|undefined|Infinity|\[object/);
  }
  expect(plan.sources[finding.source], `${at}: source ${finding.source}`).toBeDefined();
  if (finding.status === 'unknown') {
    expect(finding.because, at).toBeDefined();
    expect(finding.value, at).toBeUndefined();
    return;
  }
  const value = typeof finding.value === 'number' ? finding.value : finding.value?.likely;
  const last = plan.workings[finding.working]?.at(-1);
  expect(last, `${at} has a working`).toBeDefined();
  expect(Object.is(last?.value, value), `${at}: working ends in ${last?.value}, the finding has ${value}`).toBe(true);
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
  for (const finding of plan.findings) checkFinding(finding, plan);
  expect(new Set(plan.findings.map((f) => f.id)).size).toBe(plan.findings.length);
  const bad = [...numbersIn(plan)].find(([, n]) => !Number.isFinite(n));
  expect(bad, 'every number in the plan is finite').toBeUndefined();
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

  it.each(schemaPaths())('stands up with every %s taken out', (path) => {
    const { plan } = evaluate(without(demo(name), path.split('.')), {});
    expect(
      plan.findings.every((f) => f.because !== 'fault'),
      'no fault',
    ).toBe(true);
    checkPlan(plan);
  });
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

/** A document with one schema path taken out wherever it occurs; `*` stands for every entry of a map. */
function without(project: Project, keys: readonly string[]): Project {
  const cut = (tree: unknown, [key, ...rest]: readonly string[]): unknown => {
    if (key === undefined || tree === null || typeof tree !== 'object') return tree;
    const entries = Object.entries(tree);
    if (key === '*') return Object.fromEntries(entries.map(([id, below]) => [id, cut(below, rest)]));
    if (rest.length === 0) return Object.fromEntries(entries.filter(([k]) => k !== key));
    return Object.fromEntries(entries.map(([k, below]) => [k, k === key ? cut(below, rest) : below]));
  };
  return cut(project, keys) as Project;
}
