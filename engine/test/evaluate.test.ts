import { applyEdit, canonicalJson, type Edit, type Project, valueAt } from '@kneewall/project';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coldMemo, evaluate, makeJob } from '../src/index.ts';
import { demo } from './demos.ts';

const edited = (project: Project, path: readonly string[], after: unknown): Project => {
  const edit: Edit = { device: 'test', seq: 1, path, before: valueAt(project, path), after };
  const { value, problems } = applyEdit(project, edit);
  expect(problems).toEqual([]);
  return value;
};
const measured = (value: number) => ({ value, known: 'measured' as const });
const duct = ['routes', 'ducts', 'sections', 'supply-bath', 'diameter'];

describe('evaluating after an edit', () => {
  it('redoes no design for a price, only what it steers: the choice of sizes', () => {
    const project = demo('tern-ledge');
    const memo = coldMemo();
    evaluate(project, {}, { memo });
    memo.computed.clear();
    evaluate(edited(project, ['work', 'prices', 'flex-8', 'price'], measured(70)), {}, { memo });
    for (const trade of ['climate', 'loads', 'equipment', 'air', 'agreement'])
      expect(memo.computed.get(trade) ?? 0, trade).toBe(0);
    expect(memo.computed.get('add:air')).toBe(1);
  });

  it('redoes no trade for a name in the crew', () => {
    const project = demo('tern-ledge');
    const memo = coldMemo();
    evaluate(project, {}, { memo });
    memo.computed.clear();
    evaluate(edited(project, ['work', 'crew', 'ada', 'skill'], 'practised'), {}, { memo });
    for (const trade of ['climate', 'loads', 'equipment', 'air', 'agreement'])
      expect(memo.computed.get(trade) ?? 0, trade).toBe(0);
  });

  it('redoes nothing of any trade for the name of the project', () => {
    const project = demo('tern-ledge');
    const memo = coldMemo();
    const before = evaluate(project, {}, { memo }).plan;
    memo.computed.clear();
    const after = evaluate(edited(project, ['about', 'name'], 'Another name'), {}, { memo }).plan;
    expect([...memo.computed.keys()]).toEqual(['resolved', 'problems']);
    expect(after.trades.materials).toBe(before.trades.materials);
  });

  it('leaves what a price does not move: sizes, life cost, the plan of the work', () => {
    const project = demo('tern-ledge');
    const memo = coldMemo();
    const before = evaluate(project, {}, { memo }).plan;
    const after = evaluate(edited(project, ['work', 'prices', 'tape', 'price'], measured(11)), {}, { memo }).plan;
    expect(after.trades.air).toBe(before.trades.air);
    expect(after.season.lifeCost).toBe(before.season.lifeCost);
    expect(after.trades.schedule).toBe(before.trades.schedule);
    expect(after.trades.materials).not.toEqual(before.trades.materials);
  });

  it('redoes the air for a duct, and nothing before it', () => {
    const project = demo('tern-ledge');
    const memo = coldMemo();
    evaluate(project, {}, { memo });
    memo.computed.clear();
    evaluate(edited(project, duct, measured(0.1524)), {}, { memo });
    expect(Object.fromEntries(memo.computed)).toMatchObject({ air: 1, agreement: 1 });
    for (const trade of ['climate', 'loads', 'equipment']) expect(memo.computed.has(trade), trade).toBe(false);
  });

  it('always equals a cold evaluation, to the bit', () => {
    const start = demo('tern-ledge');
    const change = fc.oneof(
      fc.constantFrom(0.1016, 0.127, 0.1524, 0.2032).map((d) => [duct, measured(d)] as const),
      fc.double({ min: -25, max: -5, noNaN: true }).map((t) => [['site', 'coldNight'], measured(t)] as const),
      fc
        .double({ min: 0.5, max: 3, noNaN: true })
        .map((w) => [['house', 'openings', 'sitting-south-window', 'width'], measured(w)] as const),
      fc.constantFrom('tight', 'fair', 'leaky').map((d) => [['house', 'draught'], d] as const),
      fc.constant([['candidates', 'unit-18', 'rows'], undefined] as const),
      // Moves no result of a trade, only a job's inputs.
      fc.constant([['candidates', 'unit-24', 'outdoorLeast'], undefined] as const),
      fc
        .double({ min: 18, max: 23, noNaN: true })
        .map((t) => [['house', 'setpoints', 'heating'], measured(t)] as const),
      fc.constantFrom(40, 60).map((p) => [['work', 'prices', 'board', 'price'], measured(p)] as const),
    );
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 5 }), (changes) => {
        const memo = coldMemo();
        let project = start;
        evaluate(project, {}, { memo });
        for (const [path, after] of changes) {
          project = edited(project, path, after);
          const warm = evaluate(project, {}, { memo }).plan;
          expect(canonicalJson(warm)).toBe(canonicalJson(evaluate(project, {}).plan));
        }
      }),
      { seed: 20261125, numRuns: 8 },
    );
  });
});

describe('what a change does', () => {
  it('a wider return never lets less air through', () => {
    const project = demo('tern-ledge');
    const at = (inches: number) =>
      evaluate(
        edited(project, ['routes', 'ducts', 'sections', 'return-hall', 'diameter'], measured(inches * 0.0254)),
        {},
      ).plan.trades.air;
    const flows = [9, 10, 12, 14, 16].map((d) => at(d)?.flows);
    const flow = flows.map((f) => (f?.ok ? f.value.flow : Number.NaN));
    expect(flow).toEqual([...flow].sort((a, b) => a - b));
  });

  it('a fault in one trade blinds it and what stands on it, and nothing else', () => {
    const project = demo('tern-ledge');
    // A document that no door would let in: it breaks the loads from inside.
    const half = { value: { low: 2 }, known: 'measured' };
    const rooms = { ...project.house?.rooms, sitting: { ...project.house?.rooms?.sitting, height: half } };
    const broken = { ...project, house: { ...project.house, rooms } } as unknown as Project;
    const { plan } = evaluate(broken, {});
    const fault = plan.findings.filter((f) => f.because === 'fault').map((f) => f.trade);
    expect(fault).toContain('loads');
    expect(fault).not.toContain('climate');
    expect(plan.findings.filter((f) => f.trade === 'loads').every((f) => f.status === 'unknown')).toBe(true);
  });
});

describe('job keys', () => {
  it('are the same for equal inputs in any order and to nine digits, and differ for others', () => {
    const key = makeJob('sizing', 1, { b: 0.1 + 0.2, a: -0 }, 'short').key;
    expect(makeJob('sizing', 1, { a: 0, b: 0.3 }, 'short').key).toBe(key);
    expect(makeJob('sizing', 2, { a: 0, b: 0.3 }, 'short').key).not.toBe(key);
    expect(makeJob('sizing', 1, { a: 0, b: 0.300001 }, 'short').key).not.toBe(key);
    expect(key).toMatch(/^[0-9a-f]{64}$/);
  });
});
