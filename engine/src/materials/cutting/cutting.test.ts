import { emptyProject, openProject, resolveProject } from '@kneewall/project';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inch } from '../../physics/exact.ts';
import { cutPlan } from './cutPlan.ts';
import { drawnFrom } from './drawnFrom.ts';
import { inputsOf, lengthsOf } from './inputsOf.ts';
import { placeTakeOffs } from './takeOffs.ts';

const q = (value: number) => ({ value, known: 'measured' });

/** A project with these duct sections, and whatever else is said of its ducts. */
function inputs(sections: object, ducts: object = {}, more: object = {}) {
  const opened = openProject(JSON.stringify({ ...emptyProject, ...more, routes: { ducts: { sections, ...ducts } } }));
  if (!opened.ok) throw new Error('it opens');
  return inputsOf(resolveProject(opened.project));
}
const box = { kind: 'board', width: q(20 * inch), height: q(12 * inch), length: q(1.2), insulation: q(1.057) };
const run = (d: number, more: object = {}) => ({
  kind: 'flexible',
  from: 'box',
  diameter: q(d * inch),
  length: q(4),
  ...more,
});

describe('where ducts leave a box', () => {
  const hole = fc.record({
    diameter: fc.integer({ min: 4, max: 10 }),
    side: fc.constantFrom('left' as const, 'right' as const, 'top' as const),
    rank: fc.double({ min: 0, max: 3, noNaN: true }),
  });

  it('keeps 2 in between holes and to edges, loses none, and 18 in clear of the unit unless it says so', () => {
    fc.assert(
      fc.property(fc.array(hole, { maxLength: 8 }), fc.integer({ min: 24, max: 96 }), (holes, long) => {
        const size = { width: 20 * inch, height: 14 * inch, length: long * inch };
        const leaving = holes.map(({ diameter, side, rank }, i) => ({
          id: `h${i}`,
          name: `H${i}`,
          shape: { diameter: diameter * inch },
          drawn: { side, along: rank },
        }));
        const { openings, unplaced, holes: told } = placeTakeOffs(leaving, size, true);
        expect(openings.length + unplaced.length).toBe(holes.length);
        for (const o of openings) {
          const reach = o.shape.kind === 'round' ? o.shape.diameter / 2 : 0;
          expect(o.along - reach).toBeGreaterThanOrEqual(2 * inch - inch / 8 - 1e-9);
          expect(o.along + reach).toBeLessThanOrEqual(size.length - 2 * inch + inch / 8 + 1e-9);
          const near = o.along - reach < 18 * inch - 1e-6;
          expect(told.find((t) => t.id === o.id)?.short).toBe(near);
          for (const p of openings.filter((x) => x.side === o.side && x.along > o.along))
            if (p.shape.kind === 'round')
              expect(p.along - p.shape.diameter / 2 - (o.along + reach)).toBeGreaterThanOrEqual(
                2 * inch - inch / 8 - 1e-9,
              );
        }
      }),
      { seed: 7, numRuns: 300 },
    );
  });

  it('reads sides off the plan as one who looks along the box', () => {
    const way = [
      [0, 0, 2],
      [0, 2, 2],
    ] as const;
    const from = (x: number, y: number) => [[x, y, 2] as const];
    // Looking up the plan, left is towards smaller first measures.
    expect(drawnFrom(way, from(-0.3, 1))).toEqual({ side: 'left', along: 1 });
    expect(drawnFrom(way, from(0.3, 0.5))).toEqual({ side: 'right', along: 0.5 });
    expect(drawnFrom(way, from(0, 2))).toEqual({ side: 'end', along: 2 });
    // Drawn from its middle line, the next corner says to which side.
    expect(
      drawnFrom(way, [
        [0, 1, 2],
        [3, 1, 2],
      ]),
    ).toEqual({ side: 'right', along: 1 });
    expect(drawnFrom(undefined, from(0, 2))).toBeUndefined();
  });

  it('keeps what is entered, to the bit', () => {
    const at = { side: 'top', along: q(0.7), across: q(0.2) };
    const [made] = inputs({ box, a: run(7, { takeOff: at }) }).boxes;
    expect(made?.box.openings).toEqual([
      { id: 'a', side: 'top', along: 0.7, across: 0.2, shape: { kind: 'round', diameter: 7 * inch } },
    ]);
    expect(made?.holes[0]).toMatchObject({ side: 'entered', place: 'entered' });
  });
});

describe('what is cut', () => {
  it('takes the thinnest board that gives the insulation, and leaves out what is fitted', () => {
    const thickness = (r: number) => inputs({ box: { ...box, insulation: q(r) } }).boxes[0]?.box.thickness;
    expect([0.7, 1.057, 1.5, 3].map(thickness)).toEqual([0.0254, 0.0381, 0.0508, 0.0508]);
    const items = { i: { state: 'fitted', of: 'routes.ducts.sections.box' } };
    expect(inputs({ box }, {}, { items }).boxes).toEqual([]);
  });

  it('has its far end open where a duct of its own size goes on or a register sits in it', () => {
    const onward = { ...box, from: 'box' };
    expect(inputs({ box, onward }).boxes[0]).toMatchObject({
      open: 'goes-on',
      box: { caps: { end: false }, openings: [] },
    });
    const terminals = { t: { section: 'box', width: q(0.4), height: q(0.3) } };
    expect(inputs({ box }, { terminals }).boxes[0]).toMatchObject({ open: 'register' });
    expect(inputs({ box: { ...box, ends: { end: 'closed' } } }, { terminals }).boxes[0]?.box.openings[0]?.side).toBe(
      'bottom',
    );
  });

  it('names the form of a box that is too large for one piece, and lays the others all the same', () => {
    // 60 + 40 in inside and 12 1/2 in of stretch-out on either side is more than 120 in; an L is 60 + 40 + 6.
    const large = { ...box, width: q(60 * inch), height: q(40 * inch) };
    const cut = cutPlan(inputs({ box, large }, { cutting: { board: { form: 'one' } } }));
    expect(cut.boxes.map((b) => b.flat.problems[0]?.code)).toEqual([undefined, 'larger-than-stock']);
    expect(cut.boxes[1]?.wayOut).toBe('l');
    expect(cut.sheets[0]?.plan.sheets.flatMap((s) => s.placed).map((p) => p.piece.split(' ')[0])).toEqual([
      'box',
      'box',
    ]);
  });

  it('cuts a run of round duct so that its pieces, each into the next by its crimp, are as long as the run', () => {
    for (const length of [0.4, 1.524, 1.53, 4, 9.7]) {
      const made = lengthsOf({ id: 'r', name: 'R', length }, 1.524);
      const pieces = made.flatMap((m) => Array.from({ length: m.count }, () => m.length));
      const sum = pieces.reduce((a, x) => a + x, 0) - 1.5 * inch * (pieces.length - 1);
      expect(sum).toBeCloseTo(length, 12);
      expect(Math.max(...pieces)).toBeLessThanOrEqual(1.524);
    }
  });

  it('wraps rectangular metal in equal lengths, no longer than the sheet, and refuses a girth beyond it', () => {
    const metal = { kind: 'rectangular', width: q(0.4), height: q(0.2), length: q(3) };
    const cut = cutPlan(inputs({ metal, wide: { ...metal, width: q(1.2) } }));
    expect(cut.ducts.map((d) => [d.pieces, d.each])).toEqual([
      [3, 1],
      [0, 0],
    ]);
    expect(cut.ducts[1]?.problems[0]?.code).toBe('larger-than-stock');
  });

  it('cuts flexible duct with its slack and both collars, from the bag that a price names', () => {
    const work = { prices: { p: { duct: 'flexible', diameter: q(8 * inch), piece: q(15.24) } } };
    const flexible = run(8, { compression: q(0.1), length: q(9) });
    const [bag] = inputs({ flexible }, {}, { work }).bags;
    expect(bag?.coil).toBe(15.24);
    expect(bag?.runs[0]?.length).toBeCloseTo(10 + 4 * inch, 12);
  });
});
