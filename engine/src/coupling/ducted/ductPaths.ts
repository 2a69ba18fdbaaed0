import type { AirFlows, AirModel, DuctSection } from '../../air/ductwork.ts';
import { sectionsOf } from '../../air/sectionsOf.ts';
import { keptShare } from '../../physics/flow/index.ts';
import { type Places, placeOf, zonesOf } from './places.ts';

/** A temperature as so much of the leaving air's and so much of each zone's; the parts add up to one. */
export type Mix = { readonly leaving: number; readonly zones: Float64Array };

/** Air blown into a zone, kg/s, and the temperature it has there. */
export type Blown = { readonly zone: number; readonly q: number; readonly mix: Mix };

/**
 * Where air and heat go while the fan moves so much. Everything is linear in the temperatures of zones and of the
 * leaving air while the flows stand.
 */
export type DuctPaths = {
  readonly zones: readonly string[];
  /** `sent` is what set out from the unit for it, kg/s; the rest leaked out on the way. */
  readonly registers: readonly (Blown & { readonly sent: number })[];
  readonly leaks: readonly Blown[];
  /** Walls that give heat to the zone round them: kg/s, in and out. */
  readonly walls: readonly { readonly zone: number; readonly q: number; readonly inlet: Mix; readonly outlet: Mix }[];
  /** The air that reaches the unit: a share of each zone's. */
  readonly back: Float64Array;
  /** kg/s taken from each zone, by grilles and by leaks. */
  readonly taken: Float64Array;
};

export type PathsAt = {
  /** Of the flows as solved, for a slower fan; kg/m³ of the air they are counted in. */
  readonly share: number;
  readonly density: number;
  /** No heat passes the walls, so that temperatures stand for what the air carries with it. */
  readonly insulated: boolean;
};

/** What solved flows are needed for here: m³/s by section and terminal. */
export type DuctFlows = Pick<AirFlows, 'sections' | 'terminals'>;

/** Follows the air through supply and return. */
export function ductPaths(model: AirModel, flows: DuctFlows, places: Places, at: PathsAt): DuctPaths {
  const zones = zonesOf(places);
  const run: Run = {
    model,
    n: zones.length,
    // A house told as a whole has one room for all registers.
    zone: (id) => zones.indexOf(places.rooms.includes(id) ? id : places.inside),
    around: (x) => zones.indexOf(placeOf(x, places)),
    section: (x) => (flows.sections[x.id] ?? 0) * at.share * at.density,
    terminal: (id) => (flows.terminals[id] ?? 0) * at.share * at.density,
    kept: (x, q) => (at.insulated ? 1 : keptShare(x.surface, x.insulation, q)),
  };
  const supply = followSupply(run);
  const back = followReturn(run);
  return { zones, ...supply, ...back, walls: [...supply.walls, ...back.walls] };
}

type Run = {
  readonly model: AirModel;
  readonly n: number;
  readonly zone: (id: string) => number;
  readonly around: (x: DuctSection) => number;
  /** kg/s */
  readonly section: (x: DuctSection) => number;
  readonly terminal: (id: string) => number;
  readonly kept: (x: DuctSection, q: number) => number;
};

function followSupply(run: Run): Pick<DuctPaths, 'registers' | 'leaks' | 'walls'> {
  const leaks: Blown[] = [];
  const walls: DuctPaths['walls'][number][] = [];
  const ends = new Map<string, { readonly mix: Mix; readonly tight: number }>();
  const start = { mix: { leaving: 1, zones: new Float64Array(run.n) }, tight: 1 };
  for (const x of sectionsOf(run.model, 'supply')) {
    const zone = run.around(x);
    const q = run.section(x);
    const { mix: inlet, tight } = (x.from === undefined ? undefined : ends.get(x.from)) ?? start;
    const outlet = towards(inlet, zone, run.kept(x, q));
    ends.set(x.id, { mix: outlet, tight: tight * (1 - x.leakage) });
    walls.push({ zone, q, inlet, outlet });
    if (x.leakage > 0) leaks.push({ zone, q: q * x.leakage, mix: outlet });
  }
  const registers = run.model.terminals.flatMap((t) => {
    const end = ends.get(t.section);
    const q = run.terminal(t.id);
    return end ? [{ zone: run.zone(t.room), q, sent: q / end.tight, mix: end.mix }] : [];
  });
  return { registers, leaks, walls };
}

function followReturn(run: Run): Pick<DuctPaths, 'back' | 'taken' | 'walls'> {
  const taken = new Float64Array(run.n);
  const walls: DuctPaths['walls'][number][] = [];
  const arriving = new Map<string, { q: number; readonly zones: Float64Array }>();
  const arrive = (id: string, q: number, zones: Float64Array): void => {
    const sum = arriving.get(id) ?? { q: 0, zones: new Float64Array(run.n) };
    sum.q += q;
    for (let z = 0; z < run.n; z++) sum.zones[z] = (sum.zones[z] ?? 0) + q * (zones[z] ?? 0);
    arriving.set(id, sum);
  };
  const draw = (id: string, zone: number, q: number): void => {
    taken[zone] = (taken[zone] ?? 0) + q;
    arrive(id, q, only(zone, run.n));
  };
  const sections = sectionsOf(run.model, 'return');
  const mine = new Set(sections.map((x) => x.id));
  for (const t of run.model.terminals) if (mine.has(t.section)) draw(t.section, run.zone(t.room), run.terminal(t.id));
  for (const x of sections.reverse()) {
    const zone = run.around(x);
    const q = run.section(x);
    draw(x.id, zone, q * x.leakage);
    const inlet = mixed(arriving.get(x.id), run.n);
    const outlet = towards(inlet, zone, run.kept(x, q));
    walls.push({ zone, q, inlet, outlet });
    arrive(x.from ?? unitInlet, q, outlet.zones);
  }
  return { back: mixed(arriving.get(unitInlet), run.n).zones, taken, walls };
}

/** No section has this name: ids have no blanks. */
const unitInlet = 'unit inlet';

const only = (zone: number, n: number): Float64Array =>
  Float64Array.from({ length: n }, (_, z) => (z === zone ? 1 : 0));

function mixed(sum: { readonly q: number; readonly zones: Float64Array } | undefined, n: number): Mix {
  if (!sum || sum.q <= 0) return { leaving: 0, zones: new Float64Array(n) };
  return { leaving: 0, zones: sum.zones.map((x) => x / sum.q) };
}

/** The mix at a run's end: the kept share of its inlet, the rest as warm as what surrounds it. */
function towards(inlet: Mix, zone: number, kept: number): Mix {
  const zones = inlet.zones.map((x) => x * kept);
  zones[zone] = (zones[zone] ?? 0) + 1 - kept;
  return { leaving: inlet.leaving * kept, zones };
}
