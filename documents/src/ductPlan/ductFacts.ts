import type { Plan } from '@kneewall/engine';
import { inOrder, type Project, type ResolvedProject, resolveProject } from '@kneewall/project';

/** m across the plan and up the plan. */
export type Spot = readonly [number, number];

/** Inner sizes, m: a diameter, or width by height. */
export type Size = { readonly diameter: number } | { readonly width: number; readonly height: number };

/** One section as entered, with what the plan says flows in it. m, m³/s, m/s, Pa; absent where nobody knows. */
export type DuctFact = {
  readonly id: string;
  /** Short name on the drawing: S1, S2 on the supply side, R1 on the return side. */
  readonly tag: string;
  readonly name: string;
  readonly side: 'supply' | 'return';
  readonly from?: string;
  readonly kind: 'flexible' | 'round' | 'rectangular' | 'board';
  readonly size?: Size;
  readonly length?: number;
  readonly flow?: number;
  readonly speed?: number;
  readonly drop?: number;
  /** From the end nearer the air handler outward; absent where no way is drawn. */
  readonly way?: readonly Spot[];
};

/** A register or grille; `width` by `height` is its face. */
export type FaceFact = {
  readonly id: string;
  readonly tag: string;
  readonly name: string;
  readonly section?: string;
  readonly room?: string;
  readonly side: 'supply' | 'return';
  readonly size?: Size;
  readonly flow?: number;
  readonly drop?: number;
  readonly at?: Spot;
};

/** All that a picture of the ducts is made from. */
export type DuctFacts = {
  readonly ducts: readonly DuctFact[];
  readonly faces: readonly FaceFact[];
  readonly handler: { readonly at?: Spot; readonly size?: { readonly length: number; readonly depth: number } };
  readonly rooms: readonly { readonly id: string; readonly name: string; readonly corners: readonly Spot[] }[];
  /** Compass direction that the top of the plan looks to, degrees. */
  readonly north?: number;
};

type Ducts = ResolvedProject['routes']['ducts'];
type SectionInput = Ducts['sections'][string];
type Number = { readonly likely: number } | { readonly missing: true };

const likely = (x: Number): number | undefined => ('likely' in x ? x.likely : undefined);
/** An object without the keys whose value is absent. */
const known = <T extends object>(entries: T): { [K in keyof T]?: Exclude<T[K], undefined> } =>
  Object.fromEntries(Object.entries(entries).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]?: Exclude<T[K], undefined>;
  };

/** Reads sections, registers, handler and room outlines from a project, and flows and pressures from its plan. Pure. */
export function ductFacts(plan: Plan, project: Project): DuctFacts {
  const resolved = resolveProject(project);
  const { ducts } = resolved.routes;
  const count = { supply: 0, return: 0 };
  const sections = inOrder(ducts.sections).map(([id, x]) => {
    const side = sideOf(x);
    count[side] += 1;
    return ductFact(id, `${side === 'supply' ? 'S' : 'R'}${count[side]}`, x, plan);
  });
  const sides = new Map(sections.map((x) => [x.id, x.side]));
  const faces = inOrder(ducts.terminals).map(([id, t], i) =>
    faceFact(id, `${i + 1}`, t, { plan, rooms: resolved.house.rooms, side: sides.get(t.section ?? '') ?? 'supply' }),
  );
  return {
    ducts: sections,
    faces,
    handler: handlerOf(resolved),
    rooms: inOrder(resolved.house.rooms).flatMap(([id, room]) =>
      room.outline && room.outline.length > 2 ? [{ id, name: room.name ?? id, corners: room.outline }] : [],
    ),
    ...known({ north: likely(ducts.north) }),
  };
}

const sideOf = (x: SectionInput): 'supply' | 'return' => ('choice' in x.side ? x.side.choice : 'supply');

function ductFact(id: string, tag: string, x: SectionInput, plan: Plan): DuctFact {
  const air = plan.trades.air;
  const flow = air?.flows.ok ? air.flows.value.sections[id] : undefined;
  const drop = air?.flows.ok ? air.flows.value.drops[id] : undefined;
  const area = air?.model.ok ? air.model.value.sections.find((s) => s.id === id)?.area : undefined;
  const speed = flow !== undefined && area !== undefined && area > 0 ? flow / area : undefined;
  const way = x.points && x.points.length > 1 ? x.points.map(([east, up]): Spot => [east, up]) : undefined;
  return {
    id,
    tag,
    name: x.name ?? id,
    side: sideOf(x),
    kind: 'choice' in x.kind ? x.kind.choice : 'flexible',
    ...known({ from: x.from, size: sizeOf(x), length: likely(x.length), flow, speed, drop, way }),
  };
}

function sizeOf(x: { readonly diameter?: Number; readonly width: Number; readonly height: Number }): Size | undefined {
  const diameter = x.diameter ? likely(x.diameter) : undefined;
  if (diameter !== undefined && diameter > 0) return { diameter };
  const [width, height] = [likely(x.width), likely(x.height)];
  return width !== undefined && height !== undefined && width * height > 0 ? { width, height } : undefined;
}

type Around = {
  readonly plan: Plan;
  readonly rooms: ResolvedProject['house']['rooms'];
  readonly side: 'supply' | 'return';
};

function faceFact(id: string, tag: string, t: Ducts['terminals'][string], { plan, rooms, side }: Around): FaceFact {
  const air = plan.trades.air;
  const flow = air?.flows.ok ? air.flows.value.terminals[id] : undefined;
  const resistance = air?.model.ok ? air.model.value.terminals.find((x) => x.id === id)?.resistance : undefined;
  const drop = flow !== undefined && resistance !== undefined ? resistance * flow * flow : undefined;
  const room = t.room === undefined ? undefined : (rooms[t.room]?.name ?? t.room);
  return {
    id,
    tag,
    name: t.name ?? id,
    side,
    ...known({ section: t.section, room, size: sizeOf(t), flow, drop, at: spotOf(t.at) }),
  };
}

function spotOf({ x, y }: { readonly x: Number; readonly y: Number }): Spot | undefined {
  const [across, up] = [likely(x), likely(y)];
  return across === undefined || up === undefined ? undefined : [across, up];
}

/** The chosen unit's air handler, or the only one's, lying down: its longest side and the next. */
function handlerOf({ candidates, routes }: ResolvedProject): DuctFacts['handler'] {
  const all = Object.values(candidates);
  const marked = all.filter((c) => c.chosen);
  const [unit] = marked.length > 0 ? marked : all.length === 1 ? all : [];
  const box = unit?.handler;
  const sides = box
    ? [likely(box.width), likely(box.depth), likely(box.height)].flatMap((n) => (n !== undefined && n > 0 ? [n] : []))
    : [];
  const [length, depth] = sides.sort((a, b) => b - a);
  const size = length !== undefined && depth !== undefined && sides.length === 3 ? { length, depth } : undefined;
  return known({ at: spotOf(routes.ducts.handler.at), size });
}
