import { inOrder, type ResolvedProject } from '@kneewall/project';
import { type Scenario, scenario } from '../../plan/scenario.ts';
import { drawnFrom } from './drawnFrom.ts';
import type { CutBox } from './result.ts';
import { type Leaving, placeTakeOffs } from './takeOffs.ts';

type Ducts = ResolvedProject['routes']['ducts'];
export type Section = Ducts['sections'][string];

/** Boards by thickness, m, and the insulation they give, m²K/W. Source: `cutting.stock` (common practice). */
const boardInsulation: readonly (readonly [number, number])[] = [
  [0.0254, 0.757],
  [0.0381, 1.145],
  [0.0508, 1.532],
];

/** Sections that are in the house already are not cut: they say so, or an item that stands for them is fitted. */
export function fittedSections({ items, routes }: Pick<ResolvedProject, 'items' | 'routes'>): ReadonlySet<string> {
  const fitted = inOrder(items).flatMap(([, { of, state }]) => {
    const section = /^routes\.ducts\.sections\.(.+)$/.exec(of ?? '')?.[1];
    return section !== undefined && 'choice' in state && state.choice === 'fitted' ? [section] : [];
  });
  const said = inOrder(routes.ducts.sections).flatMap(([id, { already }]) =>
    'choice' in already && already.choice !== 'new' ? [id] : [],
  );
  return new Set([...fitted, ...said]);
}

const chosen = <T extends string>(field: { readonly choice: T } | { readonly missing: true }): T | undefined =>
  'choice' in field ? field.choice : undefined;

/** Inside size of a section; nothing where it is not entered whole. */
export function sizeOf(x: Section, s: Scenario): Leaving['shape'] | undefined {
  const [diameter, width, height] = [s.maybe(x.diameter), s.maybe(x.width), s.maybe(x.height)];
  if (diameter !== undefined && diameter > 0) return { diameter };
  return width !== undefined && height !== undefined && width * height > 0 ? { width, height } : undefined;
}

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
      thickness: entered ?? thinnest(s.of(x.insulation)),
      openings: placed.openings,
      caps: { start: chosen(x.ends.start) === 'closed', end: open === undefined },
    },
    holes: placed.holes,
    unplaced: placed.unplaced,
    thicknessFrom: entered === undefined ? 'insulation' : 'entered',
    ...(open === undefined ? {} : { open }),
  };
}

/** The thinnest board that gives the insulation, to a hundredth; the thickest where none does. */
const thinnest = (insulation: number): number =>
  (boardInsulation.find(([, r]) => r >= 0.99 * insulation) ?? boardInsulation.at(-1))?.[0] ?? 0.0254;

/** A duct of the box's own size that is not sent to a side. */
const goesOn = (l: Leaving, { width, height }: { width: number; height: number }): boolean =>
  (l.side === undefined || l.side === 'end') &&
  'width' in l.shape &&
  Math.abs(l.shape.width - width) < 1e-4 &&
  Math.abs(l.shape.height - height) < 1e-4;

function leavingOf(id: string, box: Section, ducts: Ducts, s: Scenario): Leaving[] {
  return inOrder(ducts.sections).flatMap(([own, x]) => {
    const shape = x.from === id && own !== id ? sizeOf(x, s) : undefined;
    if (!shape) return [];
    const [side, along, across] = [chosen(x.takeOff.side), s.maybe(x.takeOff.along), s.maybe(x.takeOff.across)];
    const drawn = drawnFrom(box.points, x.points);
    return [
      {
        id: own,
        name: x.name ?? own,
        shape,
        ...(side === undefined ? {} : { side }),
        ...(along === undefined ? {} : { along }),
        ...(across === undefined ? {} : { across }),
        ...(drawn ? { drawn } : {}),
      },
    ];
  });
}

function facesOf(id: string, ducts: Ducts, s: Scenario): Leaving[] {
  return inOrder(ducts.terminals).flatMap(([own, t]) => {
    const [width, height] = [s.maybe(t.width), s.maybe(t.height)];
    if (t.section !== id || width === undefined || height === undefined) return [];
    return [{ id: own, name: t.name ?? own, shape: { width, height }, drawn: { side: 'bottom' as const, along: 0 } }];
  });
}
