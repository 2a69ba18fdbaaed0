import { emptyProject, openProject, resolveProject } from '@kneewall/project';
import { expect, it } from 'vitest';
import { inch } from '../../../physics/exact.ts';
import { cutPlan } from '../cutPlan.ts';
import { inputsOf } from '../inputsOf.ts';
import { withSheets } from '../lines.ts';
import { madeFindings } from './findings.ts';

const q = (value: number) => ({ value, known: 'measured' });
const round = (d: number, more: object = {}) => ({ kind: 'round', diameter: q(d * inch), length: q(3), ...more });
const reducer = (more: object = {}) => ({ fittings: { step: { kind: 'reducer', reducer: { made: 'cut', ...more } } } });

function cutOf(sections: object, more: { handler?: object; candidates?: object } = {}) {
  const { handler = {}, candidates = {} } = more;
  const text = JSON.stringify({ ...emptyProject, candidates, routes: { ducts: { sections, handler } } });
  const opened = openProject(text);
  if (!opened.ok) throw new Error('it opens');
  return cutPlan(inputsOf(resolveProject(opened.project)));
}
const laid = (cut: ReturnType<typeof cutOf>) => cut.sheets.flatMap((s) => s.plan.sheets.flatMap((x) => x.placed));

it('a reducer is cut only where it says so, and lies on a sheet', () => {
  const branch = round(6, { from: 'trunk', fittings: { step: { kind: 'reducer' } } });
  expect(cutOf({ trunk: round(8), branch }).made).toEqual([]);
  const cut = cutOf({ trunk: round(8), branch: round(6, { from: 'trunk', ...reducer() }) });
  // Narrowing by an inch to a side at 25 degrees, in half inches, no shorter than 4 in.
  expect(cut.made).toMatchObject([
    { what: 'reducer', length: 4 * inch, problems: [], arcs: { angle: expect.any(Number) } },
  ]);
  expect(laid(cut).map((p) => p.piece)).toEqual(['branch step']);
  const line = withSheets([], { ok: true, value: cut }).find((l) => l.id === 'materials/made:branch-step');
  expect(line?.what).toContain('8 in (203 mm) round to 6 in (152 mm) round');
});

it('one that lies flat along the bottom leans, and has each rim as long as its circle', () => {
  const cut = cutOf({ trunk: round(8), branch: round(6, { from: 'trunk', ...reducer({ lies: 'bottom' }) }) });
  expect(cut.made).toMatchObject([{ what: 'reducer', offset: [0, expect.closeTo(-inch, 9)], problems: [] }]);
  const piece = cut.sheets[0]?.pieces[0];
  const corners = piece?.outline ?? [];
  const n = 25;
  const along = (from: number, to: number) =>
    corners.slice(from, to).reduce((sum, p, i, all) => {
      const next = all[i + 1];
      return next ? sum + Math.hypot(next[0] - p[0], next[1] - p[1]) : sum;
    }, 0);
  const rims = [along(0, n), along(n, 2 * n)].map((x) => x / Math.PI);
  // Diameters in the middle of the sheet.
  const sheet = cut.sheets[0]?.thickness ?? 0;
  expect(rims).toEqual([expect.closeTo(8 * inch + sheet, 6), expect.closeTo(6 * inch + sheet, 6)]);
});

it('between rectangles it is cut in halves; without the sizes it names what is missing; too short it leans too much', () => {
  const flat = (w: number, h: number, more: object = {}) => ({
    kind: 'rectangular',
    width: q(w * inch),
    height: q(h * inch),
    length: q(1),
    ...more,
  });
  const cut = cutOf({ trunk: flat(16, 8), branch: flat(10, 8, { from: 'trunk', ...reducer() }) });
  expect(laid(cut).filter((p) => p.piece.startsWith('branch step')).length).toBe(2);
  const missing = madeFindings(cutOf({ branch: round(6, reducer()) }).made);
  expect(missing[0]?.draft.value).toMatchObject({ because: 'missing', paths: ['routes.ducts.sections.branch.from'] });
  const steep = cutOf({ trunk: round(12), branch: round(6, { from: 'trunk', ...reducer({ length: q(3 * inch) }) }) });
  expect(madeFindings(steep.made)[0]?.draft).toMatchObject({
    value: { value: expect.closeTo(45, 6) },
    limit: { max: 30 },
  });
});

it('a closed end of metal has a cap where caps are cut, round or not, and a hole in it for what leaves there', () => {
  const ends = { end: 'closed', caps: 'cut' };
  const trunk = { kind: 'rectangular', width: q(16 * inch), height: q(8 * inch), length: q(1), ends };
  const run = round(6, { from: 'trunk', takeOff: { side: 'end' } });
  const cut = cutOf({ trunk, run, stub: round(8, { ends }) });
  expect(cut.ducts[0]).toMatchObject({ pieces: 1, problems: [], caps: { start: false, end: true } });
  const ids = laid(cut).map((p) => p.piece);
  expect(ids.sort()).toEqual(['stub cap end', 'trunk', 'trunk end']);
  const cap = cut.sheets[0]?.pieces.find((p) => p.id === 'trunk end');
  expect(cap?.holes.map((h) => h.id)).toEqual(['run']);
  // In the middle of the cap, as it is of the end.
  expect(cap?.holes[0]?.centre).toEqual([
    expect.closeTo((cap?.size.width ?? 0) / 2 - 0.00055, 3),
    expect.closeTo((cap?.size.height ?? 0) / 2 - 0.00055, 3),
  ]);
  const bought = cutOf({ trunk: { ...trunk, ends: { end: 'closed' } } });
  expect(laid(bought).map((p) => p.piece)).toEqual(['trunk']);
});

it('a box of metal for several ducts at the unit is wrapped and capped', () => {
  const unit = { openings: { supply: { width: q(20 * inch), height: q(10 * inch) } } };
  const cut = cutOf(
    { a: round(8), b: round(6) },
    { candidates: { unit }, handler: { supplyJoint: { made: 'metal' } } },
  );
  expect(cut.ducts[0]).toMatchObject({ id: 'unit:supply', problems: [], caps: { end: true } });
  expect(laid(cut).map((p) => p.piece)).toEqual(expect.arrayContaining(['unit:supply', 'unit:supply end']));
});
