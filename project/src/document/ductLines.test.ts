import { describe, expect, it } from 'vitest';
import { openProject } from './open.ts';

const opened = (rest: object) => openProject(JSON.stringify({ schema: 1, ...rest }));
const number = (value: unknown) => ({ value, known: 'measured' });
const price = (entry: object) => ({ work: { prices: { line: entry } } });
const section = (entry: object) => ({ routes: { ducts: { sections: { run: entry } } } });

describe('a space, a stocked size or a price that cannot be', () => {
  it.each<[string, object, string, RegExp]>([
    [
      'a bay of no depth',
      section({ space: { depth: number(0) } }),
      'routes.ducts.sections.run.space.depth.value',
      /more than 0/,
    ],
    [
      'a width below nothing',
      section({ space: { width: number(-0.3) } }),
      'routes.ducts.sections.run.space.width.value',
      /more than 0/,
    ],
    ['a price as text', price({ price: number('sixty') }), 'work.prices.line.price.value', /wrong form/],
    ['a price below nothing', price({ price: number(-5) }), 'work.prices.line.price.value', /cannot be below 0/],
    [
      'a price that falls',
      price({ price: number({ low: 9, likely: 5, high: 7 }) }),
      'work.prices.line.price.value',
      /have to rise/,
    ],
    ['a bag of no length', price({ piece: number(0) }), 'work.prices.line.piece.value', /more than 0/],
    ['a kind nobody sells', price({ duct: 'bamboo' }), 'work.prices.line.duct', /one of: flexible/],
    [
      'a size of no width',
      { work: { stock: { one: { width: number(0) } } } },
      'work.stock.one.width.value',
      /more than 0/,
    ],
    [
      'a joint quicker than nothing',
      { routes: { ducts: { make: { joints: { round: number(-60) } } } } },
      'routes.ducts.make.joints.round.value',
      /cannot be below 0/,
    ],
  ])('%s is refused at its place', (_what, rest, place, words) => {
    const out = opened(rest);
    expect(out.ok).toBe(false);
    const problem = out.problems.find((p) => p.path.join('.') === place);
    expect(problem?.grade).toBe('refused');
    expect(problem?.mend).toMatch(words);
  });
});

describe('a line that is duct but not said whole', () => {
  it.each<[string, object, string]>([
    [
      'flexible without a diameter',
      price({ duct: 'flexible', width: number(0.2), height: number(0.2) }),
      'work.prices.line.diameter',
    ],
    ['rectangular without a height', price({ duct: 'rectangular', width: number(0.2) }), 'work.prices.line.height'],
    ['board without any size', { work: { stock: { one: { duct: 'board' } } } }, 'work.stock.one.width'],
    [
      'a price without the length it buys',
      price({ duct: 'round', diameter: number(0.2), price: number(12) }),
      'work.prices.line.piece',
    ],
    [
      'a space that is said to be free',
      section({ space: { passes: 'free', depth: number(0.3) } }),
      'routes.ducts.sections.run.space.passes',
    ],
  ])('%s is kept and asked about', (_what, rest, place) => {
    const out = opened(rest);
    expect(out.ok).toBe(true);
    expect(out.problems.map((p) => [p.code, p.grade, p.path.join('.')])).toEqual([['incomplete', 'ask', place]]);
  });

  it('a price of an elbow needs no length, and one of no duct needs nothing', () => {
    const bend = { duct: 'round', part: 'bend', diameter: number(0.2), price: number(12) };
    for (const entry of [bend, { name: 'Tape', price: number(9) }]) expect(opened(price(entry)).problems).toEqual([]);
  });
});
