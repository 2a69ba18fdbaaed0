import { describe, expect, it } from 'vitest';
import { inch } from '../exact.ts';
import type { BoardBox } from './fold/boardBox.ts';
import { unfoldBox } from './fold/box.ts';
import { onSheet } from './fold/onSheet.ts';
import { areaOf } from './fold/pattern.ts';
import { unfoldTransition } from './metal/transition.ts';
import { unfoldWrap } from './metal/wrap.ts';
import { packSheets } from './sheets/packSheets.ts';

const box: BoardBox = {
  id: 'plenum',
  width: 20 * inch,
  height: 16 * inch,
  length: 40 * inch,
  thickness: inch,
  openings: [
    { id: 'collar', side: 'top', along: 10 * inch, across: 6 * inch, shape: { kind: 'round', diameter: 8 * inch } },
  ],
  caps: { start: false, end: false },
  form: 'one',
  sheet: { width: 120 * inch, height: 48 * inch },
};
const codes = (b: Partial<BoardBox>) => unfoldBox({ ...box, ...b }).problems.map((p) => `${p.at.join('/')} ${p.code}`);
const opening = (o: Partial<BoardBox['openings'][number]>): BoardBox['openings'] => [
  { id: 'hole', side: 'top', along: 0.4, across: 0.25, shape: { kind: 'round', diameter: 0.2 }, ...o },
];

describe('a box of board', () => {
  it('has its hole in the side asked for, from the left of that side', () => {
    const [piece] = unfoldBox(box).pieces;
    // The top lies last, from right to left: 57.25 in to its edge, 7/8 in to its inside, 14 of its 20 in.
    expect(piece?.holes[0]?.centre[0]).toBeCloseTo((57.25 + 0.875 + 14) * inch, 12);
    expect(piece?.holes[0]?.centre[1]).toBeCloseTo(10 * inch, 12);
  });

  it('goes into two pieces where its girth is more than the sheet, and into four where they are', () => {
    const form = (width: number, height: number) =>
      unfoldBox({ ...box, width: width * inch, height: height * inch, openings: [], form: 'fewest' }).form;
    expect([form(30, 26), form(31, 26), form(60, 50), form(62, 70)]).toEqual(['one', 'l', 'l', 'four']);
  });

  it('is longer by half a board at a capped end, into which the cap plugs', () => {
    const flat = unfoldBox({ ...box, caps: { start: true, end: true } });
    expect(flat.pieces.map((p) => p.id)).toEqual(['plenum', 'plenum start', 'plenum end']);
    expect(flat.pieces[0]?.size.height).toBeCloseTo(41 * inch, 12);
    expect(flat.pieces[0]?.holes[0]?.centre[1]).toBeCloseTo(10.5 * inch, 12);
    expect(flat.outside.length).toBeCloseTo(42 * inch, 12);
  });

  it('has holes in its caps, the start’s seen looking back', () => {
    const caps = { start: true, end: true };
    const hole = { along: 5 * inch, across: 6 * inch };
    const openings = [...opening({ ...hole, id: 'a', side: 'start' }), ...opening({ ...hole, id: 'b', side: 'end' })];
    const [, start, end] = unfoldBox({ ...box, caps, openings }).pieces;
    expect(start?.holes[0]?.centre.map((x) => x / inch)).toEqual([expect.closeTo(15, 9), expect.closeTo(6, 9)]);
    expect(end?.holes[0]?.centre.map((x) => x / inch)).toEqual([expect.closeTo(7, 9), expect.closeTo(6, 9)]);
  });

  it('tells what is wrong and draws nothing', () => {
    expect(codes({ thickness: 1.25 * inch })).toEqual(['thickness out-of-table']);
    expect(codes({ width: 0, length: Number.NaN })).toEqual(['width not-positive', 'length not-finite']);
    expect(codes({ width: 60 * inch })).toEqual(['width larger-than-stock']);
    expect(codes({ openings: opening({ across: 0.05 }) })).toEqual(['openings/0/across outside-panel']);
    expect(codes({ openings: opening({ along: 1 }) })).toEqual(['openings/0/along outside-panel']);
    expect(codes({ openings: opening({ side: 'end', along: 0.2 }) })).toEqual(['openings/0/side outside-panel']);
    expect(codes({ openings: [...opening({}), ...opening({ id: 'other', along: 0.55 })] })).toEqual([
      'openings/1 overlaps',
    ]);
    expect(unfoldBox({ ...box, width: 0 }).pieces).toEqual([]);
  });

  it('has no hole across a joint of two sections', () => {
    const long = { length: 80 * inch, form: 'one' as const, sheet: { width: 90 * inch, height: 48 * inch } };
    expect(codes({ ...long, openings: opening({ along: 40 * inch }) })).toEqual(['openings/0/along outside-panel']);
    expect(codes({ ...long, openings: opening({ along: 30 * inch }) })).toEqual([]);
  });

  it('lies on its sheet as it was placed, turned and never mirrored', () => {
    const flat = unfoldBox({ ...box, openings: opening({}) }).pieces;
    const piece = flat[0]!;
    const job = { stock: [{ id: 'board', width: 48 * inch, height: 120 * inch }], kerf: 0, trim: 0, remnantLeast: 0.3 };
    const size = { id: piece.id, ...piece.size, count: 1, turns: true };
    const placed = packSheets({ ...job, pieces: [size] }).sheets[0]!.placed[0]!;
    const lying = onSheet(piece, placed);
    expect(placed.turned).toBe(true);
    const [xs, ys] = [lying.outline.map((p) => p[0]), lying.outline.map((p) => p[1])];
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([
      expect.closeTo(placed.x, 9),
      expect.closeTo(placed.x + placed.width, 9),
    ]);
    expect([Math.min(...ys), Math.max(...ys)]).toEqual([
      expect.closeTo(placed.y, 9),
      expect.closeTo(placed.y + placed.height, 9),
    ]);
    // Going round the same way: the signed area keeps its sign.
    const signed = lying.outline.reduce((sum, [x, y], i, all) => {
      const [x2, y2] = all[(i + 1) % all.length]!;
      return sum + (x * y2 - x2 * y) / 2;
    }, 0);
    expect(signed).toBeCloseTo(areaOf({ outline: piece.outline, holes: [] }), 9);
  });
});

describe('sheet metal', () => {
  const wrap = {
    id: 'w',
    width: 0.4,
    height: 0.3,
    length: 1,
    thickness: 7e-4,
    radius: 8e-4,
    neutral: 0.33,
    lap: 0.025,
  };

  it('keeps its outside sizes: flats and the arcs between come to the girth', () => {
    // Without thickness or radius nothing is taken off.
    const thin = unfoldWrap({ ...wrap, thickness: 1e-12, radius: 0 }).piece;
    expect(thin?.lines.map((l) => l.from[0])).toEqual([0.4, 0.7, 1.1, 1.4].map((x) => expect.closeTo(x, 9)));
    expect(thin?.size.width).toBeCloseTo(1.425, 9);
  });

  it('tells what is wrong and draws nothing', () => {
    const bad = unfoldWrap({ ...wrap, width: 0, neutral: 2, lap: 1e-4 });
    expect(bad.piece).toBeUndefined();
    expect(bad.problems.map((p) => p.code)).toEqual(['not-positive', 'out-of-table', 'does-not-fit', 'does-not-fit']);
    const round = { kind: 'round' as const, diameter: -1 };
    const flat = unfoldTransition({
      id: 't',
      start: round,
      end: round,
      length: 1,
      offset: [0, Number.NaN],
      parts: 2.5,
      seam: 0,
    });
    expect(flat.problems.map((p) => p.code)).toEqual(['not-positive', 'not-positive', 'not-finite', 'not-whole']);
  });

  it('comes nearer to round with more parts', () => {
    const sag = (parts: number) =>
      unfoldTransition({
        id: 't',
        start: { kind: 'rectangle', width: 0.4, height: 0.4 },
        end: { kind: 'round', diameter: 0.3 },
        length: 0.4,
        offset: [0, 0],
        parts,
        seam: 0.02,
      }).sag;
    // A sixteenth of a circle of 150 mm: 150 (1 - cos 11.25°) mm.
    expect(sag(4)).toBeCloseTo(0.15 * (1 - Math.cos((11.25 * Math.PI) / 180)), 12);
    expect(sag(8)).toBeLessThan(sag(4) / 3.9);
  });
});
