import { describe, expect, it } from 'vitest';
import { emptyProject, parseQuantity, schemaPaths } from '../index.ts';
import { bunchesFor, fieldOf, firstBunches } from './first.ts';

const questions = firstBunches.flatMap((b) => b.questions);

describe('the first questions', () => {
  it('are fewer than 25, all different, and all in the schema', () => {
    expect(questions.length).toBeGreaterThan(15);
    expect(questions.length).toBeLessThan(25);
    expect(new Set(questions.map((q) => q.path)).size).toBe(questions.length);
    expect(questions.filter((q) => !schemaPaths().includes(q.path))).toEqual([]);
  });

  it.each(questions.map((q) => [q.path, q] as const))('%s can be answered in one line', (_path, question) => {
    const { meta } = fieldOf(question);
    expect(['quantity', 'choice', 'flag']).toContain(meta.node);
    if (meta.node !== 'quantity') return;
    expect(question.examples?.length).toBeGreaterThan(0);
    for (const example of question.examples ?? []) {
      const parsed = parseQuantity(example, meta.kind ?? 'number');
      expect(parsed.ok, example).toBe(true);
      if (!parsed.ok || !meta.plausible) continue;
      expect(parsed.value, example).toBeGreaterThanOrEqual(meta.plausible.min);
      expect(parsed.value, example).toBeLessThanOrEqual(meta.plausible.max);
    }
  });

  it('ask for inverter and battery only where the electricity is one’s own', () => {
    expect(bunchesFor(emptyProject).some((b) => b.own)).toBe(false);
    expect(bunchesFor({ ...emptyProject, power: { supply: 'own' } }).some((b) => b.own)).toBe(true);
  });
});
