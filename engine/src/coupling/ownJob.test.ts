import { emptyProject, type Project, resolveProject } from '@kneewall/project';
import { expect, it } from 'vitest';
import { type Cost, scopes } from '../materials/result.ts';
import { ownJob } from './ownJob.ts';

const of = (likely: number, off: number, unpriced = 0) => ({
  ...{ low: likely - off, likely, high: likely + off, priced: 1, unpriced },
});
const cost = {
  ...of(0, 0),
  open: of(0, 0),
  scopes: Object.fromEntries(
    scopes.map((s) => [s, s === 'unit' ? of(3000, 300) : of(100, 0, s === 'electrical' ? 2 : 1)]),
  ),
} as unknown as Cost;

const project = (electrical: 'us' | 'licensed', permit?: number): Project =>
  ({
    ...emptyProject,
    work: {
      hands: { electrical, startUp: 'us' },
      scopePrices: {
        electrical: { value: { low: 500, likely: 900, high: 1300 }, known: 'estimated' },
        removal: { value: 200, known: 'estimated' },
        ...(permit === undefined ? {} : { permit: { value: permit, known: 'estimated' } }),
      },
    },
  }) as Project;

it('adds up the list and what is paid to others, each once', () => {
  const scopesBought = scopes.length - 1;
  const hired = ownJob(cost, resolveProject(project('licensed', 50)).work);
  // The electrician brings the electrical parts: theirs come off the list.
  expect(hired.bought.likely).toBe(3000 + 100 * (scopesBought - 1));
  expect(hired.hired).toEqual(['electrical', 'removal', 'permit']);
  expect(hired.total.ok && hired.total.value).toEqual({
    low: hired.bought.likely + 1150 - 500,
    likely: hired.bought.likely + 1150,
    high: hired.bought.likely + 1150 + 500,
  });
  const own = ownJob(cost, resolveProject(project('us', 50)).work);
  expect(own.total.ok && own.total.value.likely).toBe(3000 + 100 * scopesBought + 250);
  expect(own.unpriced).toBe(hired.unpriced + 2);
});

it('has no total where a price of what is paid to others is missing, and says which', () => {
  const { total } = ownJob(cost, resolveProject(project('us')).work);
  expect(total.ok ? [] : total.paths).toEqual(['work.scopePrices.permit']);
});
