import { expect, it } from 'vitest';
import { fonts } from '../../test/paper.ts';
import { body, page } from './block.ts';
import type { PlanSet } from './planSet.ts';
import { type PrintProgress, printPlanSet } from './print.ts';

const set: PlanSet = {
  title: 'Small',
  foot: 'Small',
  units: 'us',
  letters: 'plain',
  sheets: [],
  content: ['First', 'Second', 'Third'].flatMap((title) => [
    page(title),
    ...Array.from({ length: 80 }, (_, i) => body(`${title} ${i}`)),
  ]),
};

it('tells every block laid and every page with its part, once and in order, and prints the same bytes', async () => {
  const heard: PrintProgress[] = [];
  const told = await printPlanSet(set, fonts, (p) => heard.push(p));
  expect(Buffer.from(told).equals(Buffer.from(await printPlanSet(set, fonts)))).toBe(true);
  const laying = heard.filter((p) => p.step === 'laying');
  expect(laying.map((p) => p.done)).toEqual(set.content.map((_, i) => i + 1));
  const drawing = heard.filter((p) => p.step === 'drawing');
  const total = drawing[0]?.total ?? 0;
  expect(total).toBeGreaterThan(3);
  expect(drawing.map((p) => [p.done, p.total])).toEqual(Array.from({ length: total }, (_, i) => [i, total]));
  expect([...new Set(drawing.map((p) => p.part))]).toEqual(['First', 'Second', 'Third']);
});
