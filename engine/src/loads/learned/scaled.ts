import type { Building, Leakage, Slab, WallLayer } from '../../physics/building/index.ts';
import type { Envelope } from '../../physics/infiltration/index.ts';
import type { HouseElements } from '../element.ts';
import type { HourlyAttic } from '../house.ts';

/** Leaks that let so many times as much through. */
export const scaledLeaks = (envelope: Envelope, times: number): Envelope =>
  times === 1 ? envelope : { ...envelope, coefficient: envelope.coefficient * times };

/**
 * Paths of heat that let so many times as much through, and with them what the sun on walls and roof brings in by the
 * same way; the sun through glass stays.
 */
export const scaledElements = (built: HouseElements, times: number): HouseElements =>
  times === 1
    ? built
    : {
        ...built,
        elements: built.elements.map((e) => ({
          ...e,
          conductance: e.conductance * times,
          sun: e.part === 'windows' ? e.sun : e.sun.map((x) => x * times),
        })),
      };

/** The attic between them, as warm as before. */
export const scaledAttic = (attic: HourlyAttic | undefined, times: number): HourlyAttic | undefined =>
  times === 1 || !attic
    ? attic
    : { ...attic, ceiling: attic.ceiling * times, roof: attic.roof * times, vents: attic.vents * times };

/**
 * The heat balance's house with everything round its rooms letting so many times as much through, its leaks apart, which
 * come scaled. Areas grow and what they hold grows thinner: films count as well, no wall holds more heat, no face is
 * colder, and the sun through glass stays. What lies between rooms is untouched.
 */
export function scaledBuilding(building: Building, rooms: readonly string[], times: number): Building {
  if (times === 1) return building;
  const inside = new Set(rooms);
  const between = (s: Slab): boolean =>
    inside.has(s.inside.zone) && s.other.side === 'zone' && inside.has(s.other.zone);
  const slab = (s: Slab): Slab =>
    between(s) ? s : { ...s, area: s.area * times, layers: s.layers.map((l) => thinner(l, times)) };
  return {
    ...building,
    slabs: building.slabs.map(slab),
    windows: building.windows.map((w) => ({ ...w, slab: slab(w.slab), covering: (w.covering ?? 1) / times })),
    leakage: building.leakage.map((l) => vents(l, inside, times)),
  };
}

const thinner = (layer: WallLayer, times: number): WallLayer =>
  'density' in layer ? { ...layer, density: layer.density / times } : layer;

/** Outdoor air through the spaces round the rooms. */
function vents(leakage: Leakage, rooms: ReadonlySet<string>, times: number): Leakage {
  if (leakage.kind === 'constant') return { ...leakage, flow: leakage.flow * times };
  if (Object.keys(leakage.shares).some((zone) => rooms.has(zone))) return leakage;
  return { ...leakage, stack: leakage.stack * times, wind: leakage.wind * times };
}
