import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { evaluate, makeJob } from '../src/index.ts';
import { demo, demoNames, numbersIn } from './demos.ts';
import { planShape } from './planShape.ts';

/** Recorded plans only notice change; they do not say who is right. Record again with: npm run -s record */
describe.each(demoNames)('the recorded plan of %s', (name) => {
  it('still stands: same findings and statuses, numbers to 1e-9', () => {
    const recorded: unknown = JSON.parse(readFileSync(new URL(`./fixtures/${name}.json`, import.meta.url), 'utf8'));
    const now: unknown = JSON.parse(JSON.stringify(planShape(evaluate(demo(name), {}).plan)));
    const before = new Map(numbersIn(recorded));
    for (const [path, n] of numbersIn(now))
      expect(Math.abs(n - (before.get(path) ?? Number.NaN)), path).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(n)));
    const words = (x: unknown) => JSON.stringify(x, (_k, v: unknown) => (typeof v === 'number' ? 0 : v));
    expect(words(now)).toBe(words(recorded));
  });
});

it('the key of a job is what it always was', () => {
  expect(makeJob('climate/year', 1, { blob: 'a'.repeat(64) }, 'short').key).toBe(
    '1611f466de614f1946e23525e001757dfe974a4d750824925d58daac912a0002',
  );
});
