import type { GoodPlace, Plan, TradeResults, UnitPlace, Wall } from '@kneewall/engine';
import { inOrder, type Project, printQuantity, resolveProject, type System } from '@kneewall/project';

type Lineset = TradeResults['lineset'];
type Maps = Extract<Lineset['maps'], { ok: true }>['value'];
type Asked = Extract<Lineset['asked'], { ok: true }>['value'];
type Spot = Extract<Lineset['spot'], { ok: true }>['value'];

/** Something on a wall or on the ground before it: m across and up, below 0 out from the wall. */
export type Thing = {
  readonly name: string;
  readonly x: number;
  readonly z: number;
  readonly width: number;
  readonly height: number;
  readonly ground: boolean;
};

/** Everything the drawing of a wall shows, out of a plan. */
export type ElevationFacts = {
  readonly wall: Wall;
  readonly maps: Maps;
  readonly asked: Asked;
  readonly things: readonly Thing[];
  readonly place?: UnitPlace;
  readonly spot?: Spot;
  /** m of the set that is bought, and of what is left of it. */
  readonly set?: { readonly length: number; readonly spare: number };
  readonly places: readonly GoodPlace[];
};

/** The wall that the outdoor unit's place is on, else the first; undefined while no wall can be laid out. */
export function elevationFacts(plan: Plan, project: Project): ElevationFacts | undefined {
  const lineset = plan.trades.lineset;
  if (!lineset?.walls.ok || !lineset.maps.ok || !lineset.asked.ok) return undefined;
  const input = resolveProject(project).routes.lineset;
  const { wall: id, x, z, out, stands } = input.place;
  const wall = lineset.walls.value.find((w) => w.id === id) ?? lineset.walls.value[0];
  if (!wall) return undefined;
  const whole = wall.id === id && 'likely' in x && 'likely' in z && 'likely' in out && 'choice' in stands;
  const { set, needed, spot, places } = lineset;
  return {
    wall,
    maps: lineset.maps.value.filter((m) => m.wall === wall.id),
    asked: lineset.asked.value,
    things: thingsOf(wall, input.walls[wall.id]),
    ...(whole ? { place: { stands: stands.choice, x: x.likely, z: z.likely, out: out.likely } } : {}),
    ...(whole && spot.ok ? { spot: spot.value } : {}),
    ...(set.ok && needed.ok
      ? { set: { length: set.value.length, spare: set.value.length - needed.value.likely } }
      : {}),
    places: (places.ok ? places.value : []).filter((p) => p.wall === wall.id),
  };
}

type Input = ReturnType<typeof resolveProject>['routes']['lineset']['walls'][string];

function thingsOf(wall: Wall, input: Input | undefined): Thing[] {
  const onWall = inOrder(input?.obstacles ?? {}).map(([id, t]) => t.name ?? id);
  const below = inOrder(input?.ground.things ?? {})
    .filter(([, t]) => [t.x, t.out, t.width, t.depth].every((q) => 'likely' in q))
    .map(([id, t]) => t.name ?? id);
  return [
    ...wall.things.map((t, i) => ({ ...t, name: onWall[i] ?? t.kind, ground: false })),
    ...wall.ground.things.map((t, i) => ({
      name: below[i] ?? t.kind,
      x: t.x,
      z: -t.out - t.depth,
      width: t.width,
      height: t.depth,
      ground: true,
    })),
  ];
}

/** A length in both systems, the sheet's own first. */
export function both(length: number, units: System): string {
  const [own, other] = units === 'us' ? (['us', 'si'] as const) : (['si', 'us'] as const);
  return `${printQuantity(length, 'length', own)} (${printQuantity(length, 'length', other)})`;
}
