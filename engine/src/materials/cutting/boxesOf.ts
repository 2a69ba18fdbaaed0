import { inOrder, type ResolvedProject } from '@kneewall/project';
import { type Scenario, scenario } from '../../plan/scenario.ts';
import { facesOf, leavingOf } from './leavingOf.ts';
import type { CutBox } from './result.ts';
import { chosen, type Ducts, fittedSections, type Section, sizeOf } from './sectionsOf.ts';
import { type Leaving, placeTakeOffs } from './takeOffs.ts';

/** Boards by thickness, m, and the insulation they give, m²K/W. Source: `cutting.stock` (common practice). */
const boardInsulation: readonly (readonly [number, number])[] = [
  [0.0254, 0.757],
  [0.0381, 1.145],
  [0.0508, 1.532],
];

/**
 * Every duct of board in the document that is not fitted yet, as a box: inside sizes as entered, holes for what joins it,
 * ends as entered or by what leaves there. Boxes without width, height and length are left out: the air trade asks for them.
 */
export function boxesOf(project: Pick<ResolvedProject, 'routes' | 'items'>): CutBox[] {
  const { ducts } = project.routes;
  const s = scenario();
  const there = fittedSections(project);
  return inOrder(ducts.sections).flatMap(([id, x]) => {
    if (chosen(x.kind) !== 'board' || there.has(id)) return [];
    const box = boxOf(id, x, ducts, s);
    return box ? [box] : [];
  });
}

function boxOf(id: string, x: Section, ducts: Ducts, s: Scenario): CutBox | undefined {
  const [shape, length] = [sizeOf(x, s), s.maybe(x.length)];
  if (!shape || 'diameter' in shape || length === undefined || length <= 0) return undefined;
  const size = { ...shape, length };
  const leaving = leavingOf(id, x, ducts, s);
  const onward = leaving.find((l) => goesOn(l, shape));
  const faces = facesOf(id, ducts, s);
  const atEnd = leaving.some((l) => l !== onward && (l.side ?? l.drawn?.side) === 'end');
  const said = chosen(x.ends.end);
  const open =
    said === 'open'
      ? 'entered'
      : said === 'closed'
        ? undefined
        : onward
          ? 'goes-on'
          : faces.length > 0 && !atEnd
            ? 'register'
            : undefined;
  const rest = leaving.filter((l) => !(l === onward && open !== undefined));
  // A register that does not sit in the open end has a hole in the bottom: over a ceiling.
  const inBottom = open === 'register' ? faces.slice(1) : faces;
  const atUnit = chosen(x.side) === 'supply' && x.from === undefined;
  const placed = placeTakeOffs([...rest, ...inBottom], size, atUnit);
  const entered = s.maybe(ducts.cutting.board.thickness);
  return {
    id,
    name: x.name ?? id,
    side: chosen(x.side) ?? 'supply',
    box: {
      id,
      ...size,
      thickness: boardThickness(x, ducts, s),
      openings: placed.openings,
      caps: { start: chosen(x.ends.start) === 'closed', end: open === undefined },
    },
    holes: placed.holes,
    unplaced: placed.unplaced,
    thicknessFrom: entered === undefined ? 'insulation' : 'entered',
    ...(open === undefined ? {} : { open }),
  };
}

/** m of the board a duct is made of: as entered, else by its insulation. */
export const boardThickness = (x: Section, ducts: Ducts, s: Scenario): number =>
  s.maybe(ducts.cutting.board.thickness) ?? thinnest(s.of(x.insulation));

/** The thinnest board that gives the insulation, to a hundredth; the thickest where none does. */
const thinnest = (insulation: number): number =>
  (boardInsulation.find(([, r]) => r >= 0.99 * insulation) ?? boardInsulation.at(-1))?.[0] ?? 0.0254;

/** A duct of the box's own size that is not sent to a side. */
const goesOn = (l: Leaving, { width, height }: { width: number; height: number }): boolean =>
  (l.side === undefined || l.side === 'end') &&
  'width' in l.shape &&
  Math.abs(l.shape.width - width) < 1e-4 &&
  Math.abs(l.shape.height - height) < 1e-4;
