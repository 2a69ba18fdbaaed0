import type { ResolvedProject } from '@kneewall/project';
import { openingOf, type SideOfUnit, sidesOfUnit } from '../../../atUnit/ductsAtUnit.ts';
import { inch } from '../../../physics/exact.ts';
import { type Scenario, scenario } from '../../../plan/scenario.ts';
import { boardThickness } from '../boxesOf.ts';
import { leavingAs } from '../leavingOf.ts';
import type { CutBox, CutDuct } from '../result.ts';
import { type Leaving, type Placed, placeTakeOffs } from '../takeOffs.ts';
import { unitIsFitted } from './unitIsFitted.ts';

type Project = Pick<ResolvedProject, 'routes' | 'items' | 'candidates'>;
type Size = { readonly width: number; readonly height: number };

/** m: lengths tried for a box whose length is not entered, and the longest of them. Common practice. */
const [step, longest] = [inch, 1.5];

/** What several ducts on one side of the unit need to leave it. */
export type SharedBox = {
  readonly at: SideOfUnit;
  readonly opening: Size;
  readonly length: number;
  readonly placed: Placed;
};

/**
 * For each side of the unit that several ducts join, the box that goes on its opening: as large as that inside, closed at its
 * far end, a hole for each duct. As long as entered, else the shortest in which every hole has its place with the outlet's
 * clear stretch before them; the longest tried where none has. None where an opening or a duct's size is not entered.
 */
export function sharedBoxes(project: Project): SharedBox[] {
  if (unitIsFitted(project)) return [];
  const s = scenario();
  return sidesOfUnit(project).flatMap((at): SharedBox[] => {
    const opening = openingOf(at, s);
    const leaving = at.ducts.flatMap(({ id, section }) => leavingAs(id, section, undefined, s) ?? []);
    if ('missing' in opening || at.ducts.length < 2 || leaving.length < at.ducts.length) return [];
    const entered = s.maybe(at.joint.length);
    return [
      {
        at,
        opening,
        ...fitted(
          leaving.map((l) => sidedBySize(l, opening)),
          opening,
          at.side,
          entered,
        ),
      },
    ];
  });
}

function fitted(leaving: readonly Leaving[], opening: Size, side: SideOfUnit['side'], entered: number | undefined) {
  const at = (length: number) => ({
    length,
    placed: placeTakeOffs(leaving, { ...opening, length }, side === 'supply'),
  });
  if (entered !== undefined) return at(entered);
  for (let length = 12 * step; length < longest; length += step) {
    const box = at(length);
    if (box.placed.unplaced.length === 0 && !box.placed.holes.some((h) => h.short)) return box;
  }
  return at(longest);
}

/** A round duct too large for the upright sides goes out of the top, where that is wider; what is entered stays. */
function sidedBySize(leaving: Leaving, { width, height }: Size): Leaving {
  const { shape, side } = leaving;
  if (side !== undefined || !('diameter' in shape) || shape.diameter <= height || shape.diameter > width)
    return leaving;
  return { ...leaving, side: 'top' };
}

/** The same as boxes of board that are cut like any other. */
export function boardShared(project: Project): CutBox[] {
  const s = scenario();
  return sharedBoxes(project).flatMap(({ at, opening, length, placed }): CutBox[] => {
    if (s.choice(at.joint.made) !== 'same') return [];
    const { ducts } = project.routes;
    const thickness = Math.max(...at.ducts.map(({ section }) => boardThickness(section, ducts, s)));
    const id = sharedId(at.side);
    return [
      {
        id,
        name: sharedName(at.side),
        side: at.side,
        box: { id, ...opening, length, thickness, openings: placed.openings, caps: { start: false, end: true } },
        holes: placed.holes,
        unplaced: placed.unplaced,
        thicknessFrom: thicknessFrom(ducts, s),
      },
    ];
  });
}

/** Those of sheet metal, with a cap at their far end. */
export const metalShared = (project: Project): CutDuct[] =>
  sharedBoxes(project).flatMap(({ at, opening, length, placed }): CutDuct[] => {
    if (scenario().choice(at.joint.made) !== 'metal') return [];
    const caps = { start: false, end: true };
    return [{ id: sharedId(at.side), name: sharedName(at.side), ...opening, length, ...placed, caps }];
  });

const thicknessFrom = ({ cutting }: Project['routes']['ducts'], s: Scenario): CutBox['thicknessFrom'] =>
  s.maybe(cutting.board.thickness) === undefined ? 'insulation' : 'entered';

const sharedId = (side: SideOfUnit['side']): string => `unit:${side}`;
const sharedName = (side: SideOfUnit['side']): string => `Box on the unit’s ${side} opening`;
