import { Checking, type CutProblem } from '../problem.ts';
import type { BoardBox, Cap, Opening, Side, SideHole } from './boardBox.ts';
import { reachOf } from './pattern.ts';
import type { Section } from './sections.ts';

/** Inside size of each side across the duct; of a cap, from left to right. */
export const acrossOf = (box: Pick<BoardBox, 'width' | 'height'>, side: Side | Cap): number =>
  side === 'left' || side === 'right' ? box.height : box.width;

/** Holes of a cap, from the lower left of the air's end as it is seen from within: the start's is seen looking back. */
export const holesOfCap = (box: Pick<BoardBox, 'width' | 'openings'>, cap: Cap): SideHole[] =>
  box.openings
    .filter((o) => o.side === cap)
    .map((o) => ({
      side: cap,
      id: o.id,
      u: cap === 'start' ? box.width - o.across : o.across,
      v: o.along,
      shape: o.shape,
    }));

const inCap = (o: Opening): boolean => o.side === 'start' || o.side === 'end';

/** Sides lie on the board going down the left, along the bottom to the right, up the right, and back along the top. */
const uOf = (box: BoardBox, o: Opening): number =>
  o.side === 'left' || o.side === 'top' ? acrossOf(box, o.side) - o.across : o.across;

/** Holes whose middle lies in the section, from its own start; `before` m of wall come before the air inside. */
export const holesOfSection = (box: BoardBox, section: Section, before: number): SideHole[] =>
  box.openings
    .filter((o) => !inCap(o) && o.along + before >= section.from && o.along + before < section.to)
    .map((o) => ({ side: o.side, id: o.id, u: uOf(box, o), v: o.along + before - section.from, shape: o.shape }));

function sound(o: Opening, at: readonly (string | number)[], check: Checking): boolean {
  const sizes = o.shape.kind === 'round' ? [o.shape.diameter] : [o.shape.width, o.shape.height];
  const shaped = sizes.map((x) => check.positive([...at, 'shape'], x)).every(Boolean);
  return check.positive([...at, 'along'], o.along) && check.positive([...at, 'across'], o.across) && shaped;
}

type Holed = Pick<BoardBox, 'width' | 'height' | 'length' | 'openings' | 'caps'>;

/** What is wrong with the holes of a tube in parts along it, and of its caps where it has any, m inside. */
export function wrongHoles(
  tube: Omit<Holed, 'caps'> & Partial<Pick<Holed, 'caps'>>,
  parts: readonly { readonly from: number; readonly to: number }[],
): readonly CutProblem[] {
  const check = new Checking();
  const sections = parts.map((p) => ({ ...p, lap: 0 }));
  wrongOpenings({ caps: { start: false, end: false }, ...tube }, sections, 0, check);
  return check.problems;
}

/** Tells of holes beyond their side, across a joint, or into each other. */
export function wrongOpenings(box: Holed, sections: readonly Section[], before: number, check: Checking): void {
  check.names(
    ['openings'],
    box.openings.map((o) => o.id),
  );
  const good = box.openings.map((o, i) => sound(o, ['openings', i], check));
  box.openings.forEach((o, i) => {
    if (!good[i]) return;
    const reach = reachOf(o);
    const side = acrossOf(box, o.side);
    if (o.across - reach.x < -1e-9 || o.across + reach.x > side + 1e-9)
      check.say('outside-panel', ['openings', i, 'across'], o.across, { min: reach.x, max: side - reach.x });
    if ((o.side === 'start' || o.side === 'end') && !box.caps[o.side])
      check.say('outside-panel', ['openings', i, 'side'], o.side);
    const along = inCap(o) ? { min: 0, max: box.height } : stretchFor(o, box, sections, before);
    if (o.along - reach.y < along.min - 1e-9 || o.along + reach.y > along.max + 1e-9)
      check.say('outside-panel', ['openings', i, 'along'], o.along, {
        min: along.min + reach.y,
        max: along.max - reach.y,
      });
    box.openings.slice(0, i).forEach((other, j) => {
      if (good[j] && other.side === o.side && meet(o, other)) check.say('overlaps', ['openings', i], other.id);
    });
  });
}

/** The stretch of air inside, in the section that the hole's middle is in, from the start of the air inside. */
function stretchFor(o: Opening, box: Holed, sections: readonly Section[], before: number) {
  const own = sections.find((s) => o.along + before < s.to) ?? sections.at(-1);
  return { min: Math.max(0, (own?.from ?? 0) - before), max: Math.min(box.length, (own?.to ?? 0) - before) };
}

/** Two round holes by their middles, others by the rectangles about them. */
function meet(a: Opening, b: Opening): boolean {
  const [dx, dy] = [Math.abs(a.across - b.across), Math.abs(a.along - b.along)];
  if (a.shape.kind === 'round' && b.shape.kind === 'round')
    return Math.hypot(dx, dy) < (a.shape.diameter + b.shape.diameter) / 2 - 1e-9;
  const [ra, rb] = [reachOf(a), reachOf(b)];
  return dx < ra.x + rb.x - 1e-9 && dy < ra.y + rb.y - 1e-9;
}
