import type { DuctFact, DuctFacts, Size, Spot } from './ductFacts.ts';
import { schematicWays } from './schematic.ts';

export type LaidDuct = { readonly duct: DuctFact; readonly way: readonly Spot[]; readonly width: number };
export type LaidFace = { readonly face: DuctFacts['faces'][number]; readonly at: Spot };

/** Where everything stands, in metres across and up the plan; of a schematic the metres mean nothing. */
export type DuctLayout = {
  readonly scaled: boolean;
  /** Names of the sections that have no way drawn, where some keep the plan from being to scale. */
  readonly undrawn: readonly string[];
  readonly ducts: readonly LaidDuct[];
  readonly faces: readonly LaidFace[];
  /** Corners of the air handler, in order. */
  readonly handler: readonly Spot[];
  readonly rooms: DuctFacts['rooms'];
  readonly box: Box;
};

export type Box = { readonly left: number; readonly right: number; readonly bottom: number; readonly top: number };

/** m across a duct where no size is entered, and of every duct of a schematic. */
const plainWidth = 0.2;
/** m along and across an air handler whose sides are not entered. */
const plainHandler = { length: 1.2, depth: 0.7 };

/**
 * The ducts in plan: to scale where every section has a way drawn, else a tidy tree with supply to the right and
 * return to the left. Nothing to draw gives an empty layout with a box of no size. Pure.
 */
export function layOutDucts(facts: DuctFacts): DuctLayout {
  const undrawn = facts.ducts.filter((x) => x.way === undefined).map((x) => x.name);
  const scaled = undrawn.length === 0 && facts.ducts.length > 0;
  const schematic = scaled ? new Map<string, readonly Spot[]>() : schematicWays(facts.ducts);
  const ducts = facts.ducts.flatMap((duct): LaidDuct[] => {
    const way = scaled ? duct.way : schematic.get(duct.id);
    return way ? [{ duct, way: withoutRepeats(way), width: scaled ? widthOf(duct.size) : plainWidth }] : [];
  });
  const ends = new Map(ducts.map((x) => [x.duct.id, x.way.at(-1)] as const));
  const faces = facts.faces.flatMap((face): LaidFace[] => {
    const at = (scaled ? face.at : undefined) ?? ends.get(face.section ?? '');
    return at ? [{ face, at }] : [];
  });
  const handler = ducts.length > 0 ? handlerCorners(facts, ducts, scaled) : [];
  const rooms = scaled ? facts.rooms : [];
  const spots = [...ducts.flatMap(edgesOf), ...faces.map((f) => f.at), ...handler, ...rooms.flatMap((r) => r.corners)];
  return { scaled, undrawn: scaled ? [] : undrawn, ducts, faces, handler, rooms, box: boxOf(spots) };
}

const widthOf = (size: Size | undefined): number =>
  size === undefined ? plainWidth : 'diameter' in size ? size.diameter : size.width;

/** A drop straight down is a point in plan. */
const withoutRepeats = (way: readonly Spot[]): readonly Spot[] =>
  way.filter((spot, i) => {
    const before = way[i - 1];
    return before === undefined || before[0] !== spot[0] || before[1] !== spot[1];
  });

const edgesOf = ({ way, width }: LaidDuct): Spot[] =>
  way.flatMap(([x, y]): Spot[] => [
    [x - width / 2, y - width / 2],
    [x + width / 2, y + width / 2],
  ]);

function boxOf(spots: readonly Spot[]): Box {
  if (spots.length === 0) return { left: 0, right: 0, bottom: 0, top: 0 };
  const [xs, ys] = [spots.map((s) => s[0]), spots.map((s) => s[1])];
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

/** A box lying along the line from where the return ends to where the supply begins. */
function handlerCorners(facts: DuctFacts, ducts: readonly LaidDuct[], scaled: boolean): readonly Spot[] {
  const start = (side: 'supply' | 'return') =>
    ducts.find((x) => x.duct.side === side && x.duct.from === undefined)?.way[0];
  const [supply, back] = [start('supply'), start('return')];
  const from = back ?? supply ?? [0, 0];
  const to = supply ?? from;
  const gap = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const along: Spot = gap > 0 ? [(to[0] - from[0]) / gap, (to[1] - from[1]) / gap] : [1, 0];
  const { length, depth } = (scaled ? facts.handler.size : undefined) ?? {
    ...plainHandler,
    length: gap > 0 ? gap : plainHandler.length,
  };
  const [cx, cy] = (scaled ? facts.handler.at : undefined) ?? [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const corner = (a: number, b: number): Spot => [
    cx + (a * length * along[0] - b * depth * along[1]) / 2,
    cy + (a * length * along[1] + b * depth * along[0]) / 2,
  ];
  return [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)];
}
