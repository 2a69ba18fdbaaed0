import { emptyProject, openProject, resolveProject } from '@kneewall/project';
import { expect, it } from 'vitest';
import type { MaterialLine } from '../../plan/lines.ts';
import { cutPlan } from '../cutting/cutPlan.ts';
import { inputsOf } from '../cutting/inputsOf.ts';
import { withSheets } from '../cutting/lines.ts';
import { design } from '../design.ts';
import { sum } from '../sum.ts';

const inch = 0.0254;
const q = (value: number) => ({ value, known: 'measured' });
const panelLine = (pieces: readonly (readonly [number, number, number])[]): MaterialLine => ({
  id: 'access/panel',
  trade: 'access',
  what: 'Plywood',
  kind: 'area',
  amount: pieces.reduce((a, [n, l, w]) => a + n * l * w, 0) * inch ** 2,
  panels: {
    thickness: 0.018,
    pieces: pieces.map(([count, l, w], i) => ({ name: `p${i}`, length: l * inch, width: w * inch, count })),
  },
});

function listed(lines: readonly MaterialLine[], more: { sections?: object; work?: object } = {}) {
  const { sections = {}, work = {} } = more;
  const opened = openProject(JSON.stringify({ ...emptyProject, routes: { ducts: { sections } }, work }));
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems));
  const project = resolveProject(opened.project);
  const result = design({ project, upstream: {}, results: {} });
  const cut = cutPlan(inputsOf(project));
  const { list } = sum({ ...result, cut: { ok: true, value: cut } }, { tasks: [], materials: lines, findings: [] });
  if (!list.ok) throw new Error(list.because);
  return { list: list.value, lines: withSheets([], { ok: true, value: cut }) };
}

it('plywood is bought in whole sheets of 4 by 8 ft, as many as its pieces lie on', () => {
  const one = listed([panelLine([[2, 48, 47]])]).list;
  expect(one.lines[0]).toMatchObject({
    as: 'sheet',
    pieces: 1,
    waste: 0,
    need: expect.closeTo(2 * 48 * 47 * inch ** 2),
  });
  expect(one.panels[0]?.plan).toMatchObject({ cost: 1, proved: true });
  // Three that each take more than half of a sheet, whatever is left of it.
  expect(listed([panelLine([[3, 49, 47]])]).list.lines[0]?.pieces).toBe(3);
});

it('a panel at hand is cut first, where it is as thick; one of another thickness is not', () => {
  const hand = (mm: number) => ({
    work: {
      stock: { shed: { name: 'Shed', sheet: 'panel', length: q(1.3), across: q(1.3), thickness: q(mm / 1000) } },
    },
  });
  const lines = [panelLine([[1, 48, 48]])];
  expect(listed(lines, hand(18)).list.lines[0]?.pieces).toBe(0);
  expect(listed(lines, hand(18)).list.panels[0]?.names).toMatchObject({ 'hand shed': 'Shed' });
  expect(listed(lines, hand(12)).list.lines[0]?.pieces).toBe(1);
});

it('each splice takes one sleeve of its size and four bands, added to those of the ends', () => {
  // 50 ft in one run from bags of 25 ft: two splices, since each takes the sleeve's own length.
  const run = { kind: 'flexible', diameter: q(8 * inch), length: q(50 * 0.3048), from: undefined };
  const bands: MaterialLine = {
    id: 'air/bands',
    trade: 'air',
    what: 'Clamp bands',
    kind: 'count',
    amount: 4,
    like: { id: 'bands', what: 'Clamp bands' },
  };
  const { list } = listed([bands], {
    sections: { run },
    work: { prices: { s: { name: 'Splice sleeve', unit: 'each', price: q(6) } } },
  });
  const sleeves = list.lines.find((l) => l.id === 'materials/splice-sleeve-203');
  const parts = list.lines.find((l) => l.id === 'air/bands');
  expect(sleeves).toMatchObject({ need: 2, cost: { likely: 12 } });
  expect(parts?.need).toBe(4 + 4 * 2);
  expect(list.lines.filter((l) => /band/i.test(l.what)).length).toBe(1);
});

it('a closed end of metal takes one cap: bought, or cut, never both', () => {
  const trunk = (caps?: string) => ({
    trunk: {
      kind: 'round',
      diameter: q(10 * inch),
      length: q(2),
      ends: { start: 'closed', end: 'closed', ...(caps ? { caps } : {}) },
    },
    box: { kind: 'board', width: q(0.3), height: q(0.2), length: q(1) },
  });
  const caps = (sections: object) =>
    listed([], { sections }).list.lines.flatMap((l) => (/cap/i.test(l.what) ? [[l.what, l.need]] : []));
  expect(caps(trunk())).toEqual([['End caps of metal, 10 in (254 mm) round', 2]]);
  expect(caps(trunk('cut'))).toEqual([
    [expect.stringContaining('Cap of “trunk”, sheet metal'), 1],
    [expect.stringContaining('Cap of “trunk”, sheet metal'), 1],
  ]);
});
