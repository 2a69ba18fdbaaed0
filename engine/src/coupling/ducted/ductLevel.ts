import type { AirModel } from '../../air/ductwork.ts';
import type { DuctLevel } from '../../physics/building/index.ts';
import { heatOfAir } from '../../physics/flow/index.ts';
import { type Blown, type DuctFlows, type DuctPaths, ductPaths } from './ductPaths.ts';
import type { Places } from './places.ts';

export type LevelAt = {
  /** W of the systems together, at the coil. */
  readonly output: number;
  /** Of the flows as solved, and kg/m³ of their air. */
  readonly share: number;
  readonly density: number;
  /** Share of the air that passes the cold coil untouched. */
  readonly bypass: number;
};

/** The systems whose heat goes through the ducts, and the rooms that each of them blows into. */
export type Served = Readonly<Record<string, readonly string[]>>;

/**
 * What the ducts do at one speed of the fan. Heat is conserved: what the unit gives is what zones get, less what air
 * takes with it into the open. `leaks` is each room's share of the house's leakage.
 */
export function ductLevel(
  served: Served,
  model: AirModel,
  flows: DuctFlows,
  places: Places,
  leaks: Readonly<Record<string, number>>,
  at: LevelAt,
): DuctLevel {
  const real = ductPaths(model, flows, places, { ...at, insulated: false });
  const air = ductPaths(model, flows, places, { ...at, insulated: true });
  const { zones } = real;
  const heat = exchangeOf(real);
  const moved = airInto(air);
  const transfer = transferOf(air, places);
  const n = zones.length;
  const pairs = zones
    .flatMap((into, z) => zones.map((from, y) => ({ into, from, i: z * n + y })))
    .filter(({ into, from }) => into !== from);
  return {
    output: at.output,
    carried: Object.fromEntries(Object.entries(served).map(([id, rooms]) => [id, carriedTo(real, rooms)])),
    air: pairs
      .map(({ into, from, i }) => ({ into, from, flow: (moved[i] ?? 0) + (transfer[i] ?? 0) }))
      .filter((a) => a.flow > 0),
    walls: pairs
      .map(({ into, from, i }) => ({ into, from, conductance: (heat[i] ?? 0) - heatOfAir * (moved[i] ?? 0) }))
      .filter((w) => w.conductance !== 0),
    drawn: drawnOf(air, places, leaks),
    dries: driedBy(air, at.bypass),
  };
}

/** Everything blown into zones, by registers and by leaks. */
const blownOf = ({ registers, leaks }: DuctPaths): readonly Blown[] => [...registers, ...leaks];

/**
 * Share of a system's heat that each zone gets. The air sent to its rooms keeps what its run keeps; what is lost on the
 * way goes where all losses go. A room without a register has its heat from the others' air, as much as all keep together.
 */
function carriedTo(paths: DuctPaths, rooms: readonly string[]): Readonly<Record<string, number>> {
  const { zones, registers, leaks, walls } = paths;
  const own = registers.filter((r) => rooms.includes(zones[r.zone] ?? ''));
  const sent = own.length > 0 ? own : registers;
  const into = new Float64Array(zones.length);
  const lone = own.length === 0 ? zones.indexOf(rooms[0] ?? '') : -1;
  for (const r of sent) {
    const z = lone < 0 ? r.zone : lone;
    into[z] = (into[z] ?? 0) + r.q * r.mix.leaving;
  }
  const lost = new Float64Array(zones.length);
  for (const b of leaks) lost[b.zone] = (lost[b.zone] ?? 0) + b.q * b.mix.leaving;
  for (const w of walls) lost[w.zone] = (lost[w.zone] ?? 0) + w.q * (w.inlet.leaving - w.outlet.leaving);
  const sum = (x: Float64Array): number => x.reduce((a, b) => a + b, 0);
  const given = sent.reduce((a, r) => a + r.sent, 0);
  const astray = Math.max(0, given - sum(into));
  const scale = sum(lost) > 0 ? astray / sum(lost) : 0;
  const all = sum(into) + scale * sum(lost);
  return Object.fromEntries(zones.map((id, z) => [id, ((into[z] ?? 0) + scale * (lost[z] ?? 0)) / all]));
}

/** W/K into zone z for each degree of zone y, the unit at rest; square, by receiving zone. */
function exchangeOf(paths: DuctPaths): Float64Array {
  const { back } = paths;
  const n = paths.zones.length;
  const square = new Float64Array(n * n);
  const add = (z: number, q: number, mix: Blown['mix']): void => {
    for (let y = 0; y < n; y++) {
      // With the unit at rest air leaves as it came back.
      const part = mix.leaving * (back[y] ?? 0) + (mix.zones[y] ?? 0);
      square[z * n + y] = (square[z * n + y] ?? 0) + heatOfAir * q * part;
    }
  };
  for (const b of blownOf(paths)) add(b.zone, b.q, b.mix);
  for (const w of paths.walls) {
    add(w.zone, w.q, w.inlet);
    add(w.zone, -w.q, w.outlet);
  }
  return square;
}

/** kg/s of each zone's air that the fan blows into another; square, by receiving zone. */
function airInto(paths: DuctPaths): Float64Array {
  const n = paths.zones.length;
  const square = new Float64Array(n * n);
  for (const b of blownOf(paths))
    for (let y = 0; y < n; y++) square[b.zone * n + y] = (square[b.zone * n + y] ?? 0) + b.q * (paths.back[y] ?? 0);
  return square;
}

/** What each zone gets from the fan more than is taken from it, kg/s. */
function surplusOf(paths: DuctPaths): number[] {
  const surplus = paths.zones.map((_, z) => -(paths.taken[z] ?? 0));
  for (const b of blownOf(paths)) surplus[b.zone] = (surplus[b.zone] ?? 0) + b.q;
  return surplus;
}

/** kg/s under doors from rooms that get more than is taken from them to those that get less; square. */
function transferOf(paths: DuctPaths, { rooms }: Places): Float64Array {
  const n = paths.zones.length;
  const square = new Float64Array(n * n);
  const surplus = surplusOf(paths).map((x, z) => (rooms.includes(paths.zones[z] ?? '') ? x : 0));
  const over = surplus.reduce((a, x) => a + Math.max(0, x), 0);
  const under = surplus.reduce((a, x) => a + Math.max(0, -x), 0);
  if (over === 0 || under === 0) return square;
  for (let z = 0; z < n; z++)
    for (let y = 0; y < n; y++) {
      const [to, from] = [-(surplus[z] ?? 0), surplus[y] ?? 0];
      if (to > 0 && from > 0) square[z * n + y] = (to * from) / Math.max(over, under);
    }
  return square;
}

/** kg/s that rooms together, and each space round them, have to draw from outdoors; rooms share it as they leak. */
function drawnOf(
  paths: DuctPaths,
  { rooms }: Places,
  leaks: Readonly<Record<string, number>>,
): Readonly<Record<string, number>> {
  const surplus = surplusOf(paths);
  const all = paths.zones.reduce((a, id, z) => a + (rooms.includes(id) ? (surplus[z] ?? 0) : 0), 0);
  const drawn = paths.zones.map((id, z): [string, number] => [
    id,
    Math.max(0, rooms.includes(id) ? -all * (leaks[id] ?? 0) : -(surplus[z] ?? 0)),
  ]);
  return Object.fromEntries(drawn.filter(([, q]) => q > 0));
}

function driedBy({ zones, registers }: DuctPaths, bypass: number): Readonly<Record<string, number>> {
  const dries: Record<string, number> = {};
  for (const r of registers) {
    const id = zones[r.zone];
    if (id !== undefined) dries[id] = (dries[id] ?? 0) + r.q * (1 - bypass);
  }
  return dries;
}
