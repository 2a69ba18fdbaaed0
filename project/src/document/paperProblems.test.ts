import { describe, expect, it } from 'vitest';
import { openProject } from './open.ts';

const problemsOf = (parts: object): string[] =>
  openProject(JSON.stringify({ schema: 1, ...parts })).problems.map((p) => `${p.grade} ${p.path.join('.')}`);
const plain = (value: number) => ({ value, known: 'nameplate' });
const quote = (more: object) => ({ paperwork: { q: { kind: 'quote', ...more } } });

describe('papers that cannot be so', () => {
  it('asks about a day that the calendar has not', () => {
    expect(problemsOf({ paperwork: { p: { due: '2027-02-31' } } })).toEqual(['ask paperwork.p.due']);
    expect(problemsOf({ work: { dates: { doneBy: '2027-13-01' } } })).toEqual(['ask work.dates.doneBy']);
    expect(problemsOf({ paperwork: { p: { due: '2028-02-29' } } })).toEqual([]);
  });
  it('asks about a quote for nothing, and one in which nothing is marked', () => {
    expect(problemsOf(quote({ amount: plain(0), quote: { unit: true } }))).toEqual(['ask paperwork.q.amount']);
    expect(problemsOf(quote({ amount: plain(5000) }))).toEqual(['ask paperwork.q.quote']);
    expect(problemsOf(quote({ amount: plain(5000), quote: { ducts: true } }))).toEqual([]);
  });
  it('refuses a life of no years, and asks about a unit for nothing', () => {
    expect(problemsOf({ work: { life: { years: plain(0) } } })).toEqual(['refused work.life.years.value']);
    expect(problemsOf({ candidates: { u: { price: plain(0) } } })).toEqual(['ask candidates.u.price']);
  });
});
