import { emptyProject, openProject, resolveProject } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { inch } from '../../../physics/exact.ts';
import { cutPlan } from '../cutPlan.ts';
import { inputsOf } from '../inputsOf.ts';
import { withSheets } from '../lines.ts';
import { jointFindings } from './findings.ts';
import { unitJoints } from './unitJoints.ts';

const q = (value: number) => ({ value, known: 'measured' });
const box = { kind: 'board', width: q(20 * inch), height: q(12 * inch), length: q(1.2), insulation: q(1.057) };
const opening = (width: number, height: number) => ({ width: q(width * inch), height: q(height * inch) });

function project(openings: object | undefined, more: { sections?: object; handler?: object; items?: object } = {}) {
  const { sections = { box }, handler = {}, items = {} } = more;
  const candidates = { unit: { name: 'Unit', ...(openings ? { openings } : {}) } };
  const text = JSON.stringify({ ...emptyProject, candidates, items, routes: { ducts: { sections, handler } } });
  const opened = openProject(text);
  if (!opened.ok) throw new Error('it opens');
  return resolveProject(opened.project);
}
const supply = (...args: Parameters<typeof project>) => unitJoints(project(...args))[0];

describe('what goes between the unit and its duct', () => {
  it('is not known where the opening is not entered, and the finding names the field', () => {
    expect(supply(undefined)).toMatchObject({ state: 'unknown', missing: 'candidates.unit.openings.supply.width' });
    const [found] = jointFindings(unitJoints(project({ supply: { width: q(0.5) } })));
    expect(found?.draft.value).toMatchObject({ because: 'missing', paths: ['candidates.unit.openings.supply.height'] });
  });

  it('is nothing where both are alike and in line', () => {
    expect(supply({ supply: opening(20, 12) })?.state).toBe('straight');
    expect(supply({ supply: opening(20, 12) }, { handler: { supplyJoint: { up: q(0.02) } } })?.state).toBe('piece');
  });

  it('is long enough that a widening side leans 20 degrees and a narrowing one 25, the way the air goes', () => {
    // 3 in a side narrower for the air of the supply, wider for that of the return.
    const narrowing = (3 * inch) / Math.tan((25 * Math.PI) / 180);
    const widening = (3 * inch) / Math.tan((20 * Math.PI) / 180);
    const openings = { supply: opening(26, 12), return: opening(26, 12) };
    const sections = { box, back: { ...box, side: 'return' } };
    const lengths = unitJoints(project(openings, { sections })).map((j) => (j.state === 'piece' ? j.piece.length : 0));
    [narrowing, widening].forEach((least, i) => {
      expect(lengths[i]).toBeGreaterThanOrEqual(least);
      expect(lengths[i]).toBeLessThan(least + 0.5 * inch);
    });
  });

  it('leans too much where it is entered too short', () => {
    const handler = { supplyJoint: { length: q(3 * inch) } };
    const [found] = jointFindings(unitJoints(project({ supply: opening(26, 12) }, { handler })));
    expect(found?.draft.value).toEqual({ ok: true, value: expect.closeTo(45, 9) });
    expect(found?.draft.limit).toEqual({ max: 30 });
  });

  it('is of metal to a metal or round duct, and round at its end there', () => {
    const metal = { ...box, kind: 'rectangular' };
    const round = { kind: 'round', diameter: q(10 * inch), length: q(2) };
    const of = (section: object) => {
      const j = supply({ supply: opening(26, 9) }, { sections: { box: section } });
      return j?.state === 'piece' ? [j.piece.of, j.piece.end.kind] : [];
    };
    expect([box, metal, round].map(of)).toEqual([
      ['board', 'rectangle'],
      ['metal', 'rectangle'],
      ['metal', 'round'],
    ]);
  });

  it('is not drawn where the unit hangs there already', () => {
    const fitted = { u: { of: 'candidates.unit', state: 'fitted' } };
    expect(supply({ supply: opening(26, 9) }, { items: fitted })).toBeUndefined();
  });

  it('lies on the sheets with the box, and one of metal is on the list by its sizes', () => {
    const openings = { supply: opening(26, 9) };
    const board = cutPlan(inputsOf(project(openings)));
    const own = board.sheets.flatMap((s) => s.pieces).filter((p) => p.for === 'transition supply');
    expect(own.map((p) => p.id.split(' ').at(-1))).toEqual(['top', 'left', 'bottom', 'right']);
    const laid = board.sheets.flatMap((s) => s.plan.sheets.flatMap((x) => x.placed.map((p) => p.piece)));
    for (const p of own) expect(laid).toContain(p.id);
    const metal = cutPlan(inputsOf(project(openings, { handler: { supplyJoint: { made: 'metal' } } })));
    const lines = withSheets([], { ok: true, value: metal });
    expect(lines.find((l) => l.id === 'materials/transition:supply')?.what).toContain(
      '26 by 9 in (660 by 229 mm) to 20 by 12 in (508 by 305 mm), 6.5 in (165 mm) long',
    );
  });
});

describe('several ducts on one side of the unit', () => {
  const run = (diameter: number, more: object = {}) => ({
    kind: 'flexible',
    diameter: q(diameter * inch),
    length: q(4),
    ...more,
  });
  const shared = (sections: object, size = opening(20, 10), handler: object = {}) => {
    const p = project({ supply: size }, { sections, handler });
    return { joints: unitJoints(p), cut: cutPlan(inputsOf(p)) };
  };

  it('leave it by a box as large as the opening, closed at its end, with a hole for each', () => {
    const { joints, cut } = shared({ a: run(8), b: run(6), c: run(6) });
    expect(joints).toMatchObject([{ side: 'supply', state: 'shared', ducts: 3, of: 'board' }]);
    const [made] = cut.boxes;
    expect(made).toMatchObject({ side: 'supply', flat: { problems: [] }, unplaced: [] });
    expect(made?.flat.inside).toMatchObject({
      width: expect.closeTo(20 * inch, 9),
      height: expect.closeTo(10 * inch, 9),
    });
    expect(made?.box.caps).toEqual({ start: false, end: true });
    // In turn left and right, half the height up, behind 18 in and 2 in apart, the larger in front.
    const holes = made?.box.openings.map((o) => [o.id, o.side, o.across / inch]);
    expect(holes).toEqual([
      ['a', 'left', expect.closeTo(5, 9)],
      ['c', 'left', expect.closeTo(5, 9)],
      ['b', 'right', expect.closeTo(5, 9)],
    ]);
    const [a, c] = made?.box.openings.map((o) => o.along / inch) ?? [];
    expect(a).toBeGreaterThanOrEqual(18 + 4);
    expect((c ?? 0) - (a ?? 0)).toBeGreaterThanOrEqual(4 + 3 + 2 - 1e-9);
    expect((made?.box.length ?? 0) / inch - (c ?? 0)).toBeGreaterThanOrEqual(3 + 2 - 1e-9);
    // No shorter box would do: an inch less leaves a hole without its place.
    expect(made?.box.length).toBeCloseTo((18 + 8 + 2 + 6 + 2) * inch, 9);
    const laid = cut.sheets.flatMap((s) => s.plan.sheets.flatMap((x) => x.placed.map((p) => p.piece)));
    expect(laid.filter((id) => id.startsWith('unit:supply')).length).toBeGreaterThan(1);
  });

  it('keep what is entered of their places, and a box too short for them says which has none', () => {
    const side = { takeOff: { side: 'top', along: q(0.6), across: q(0.2) } };
    const { cut } = shared({ a: run(8, side), b: run(6) });
    expect(cut.boxes[0]?.box.openings.find((o) => o.id === 'a')).toMatchObject({
      side: 'top',
      along: 0.6,
      across: 0.2,
    });
    const short = shared({ a: run(8), b: run(6) }, opening(20, 10), { supplyJoint: { length: q(7 * inch) } });
    expect(short.cut.boxes[0]?.unplaced.map((u) => u.id)).toEqual(['a', 'b']);
  });

  it('go out of the top where they are too large for the sides, and are refused where they are too large for all', () => {
    expect(shared({ a: run(12), b: run(6) }).cut.boxes[0]?.box.openings.find((o) => o.id === 'a')?.side).toBe('top');
    const { cut } = shared({ a: run(12), b: run(6) }, opening(11, 8));
    expect(cut.boxes[0]?.flat.problems.map((p) => p.code)).toContain('outside-panel');
  });

  it('ask for the opening where it is not entered, and say what is cut where it is', () => {
    const [found] = jointFindings(unitJoints(project(undefined, { sections: { a: run(8), b: run(6) } })));
    expect(found?.draft.value).toMatchObject({ because: 'missing', paths: ['candidates.unit.openings.supply.width'] });
    const [known] = jointFindings(shared({ a: run(8), b: run(6) }).joints);
    expect(known?.draft.facts).toMatchObject({ state: 'shared', ducts: 2, of: 'board' });
  });
});

describe('holes of a metal duct', () => {
  const trunk = { kind: 'rectangular', width: q(0.4), height: q(0.2), length: q(2.4) };
  const run = (more: object) => ({ kind: 'flexible', from: 'trunk', diameter: q(0.15), length: q(4), ...more });
  const at = (side: string, along: number, across: number) => ({
    takeOff: { side, along: q(along), across: q(across) },
  });
  const cut = (sections: object) => cutPlan(inputsOf(project(undefined, { sections: { trunk, ...sections } })));

  it('lie in the part and side they are entered for, across it as seen from within', () => {
    const sections = {
      a: run(at('top', 0.3, 0.1)),
      b: run(at('top', 0.6, 0.3)),
      c: run(at('left', 1.6, 0.1)),
      d: run(at('right', 1.6, 0.1)),
    };
    const { ducts, sheets } = cut(sections);
    expect(ducts[0]?.problems).toEqual([]);
    const [one, two] = sheets[0]?.pieces ?? [];
    const bends = one?.lines.filter((l) => l.kind === 'fold').map((l) => l.from[0]) ?? [];
    const [a, b] = ['a', 'b'].map((id) => one?.holes.find((h) => h.id === id)?.centre);
    // The top lies between the second and the third bend, from right to left: as far from one as the other from the other.
    expect((a?.[0] ?? 0) - (b?.[0] ?? 0)).toBeCloseTo(0.2, 9);
    expect((a?.[0] ?? 0) + (b?.[0] ?? 0)).toBeCloseTo((bends[1] ?? 0) + (bends[2] ?? 0), 9);
    expect([a?.[1], b?.[1]]).toEqual([expect.closeTo(0.3, 9), expect.closeTo(0.6, 9)]);
    // In the second length, half the height up: in the middle of the sides, between their bends.
    const [c, d] = ['c', 'd'].map((id) => two?.holes.find((h) => h.id === id)?.centre);
    expect(d).toEqual([expect.closeTo(((bends[0] ?? 0) + (bends[1] ?? 0)) / 2, 9), expect.closeTo(0.4, 9)]);
    expect(c).toEqual([expect.closeTo(((bends[2] ?? 0) + (bends[3] ?? 0)) / 2, 9), expect.closeTo(0.4, 9)]);
  });

  it('are refused across a joint, beyond a side and into each other, and the duct is not laid', () => {
    const code = (sections: object) => cut(sections).ducts[0]?.problems.map((p) => p.code);
    expect(code({ a: run(at('top', 1.2, 0.2)) })).toEqual(['outside-panel']);
    expect(code({ a: run(at('left', 0.5, 0.02)) })).toEqual(['outside-panel']);
    expect(code({ a: run(at('top', 0.5, 0.2)), b: run(at('top', 0.6, 0.2)) })).toEqual(['overlaps']);
    expect(cut({ a: run(at('top', 1.2, 0.2)) }).sheets).toEqual([]);
  });

  it('are none for the duct that goes straight on', () => {
    const onward = { ...trunk, from: 'trunk', width: q(0.3) };
    const holes = (x: object) =>
      cut(x)
        .ducts.find((d) => d.id === 'trunk')
        ?.openings.map((o) => o.id);
    expect(holes({ onward })).toEqual([]);
    const bend = { ...run({ takeOff: { side: 'left' } }) };
    expect(holes({ onward, bend })).toEqual(['bend']);
  });
});
