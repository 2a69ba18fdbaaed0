import { combinedResistance } from '../physics/conduction/index.ts';
import { unresolved } from '../plan/outcome.ts';
import type { Scenario } from '../plan/scenario.ts';
import type { WorkingRecorder } from '../plan/working.ts';
import {
  type Assembly,
  bothFilms,
  commonU,
  enteredResistances,
  filmsIn,
  filmsOf,
  library,
  libraryU,
  type Setting,
  type SurfaceKind,
} from './constructions/index.ts';

/** How a surface of a kind stands before what is on its other side. The ground is no shelter: its films are those of a slab. */
export const settingOf = (kind: SurfaceKind, other: string): Setting => ({
  direction: kind === 'floor' ? 'down' : kind === 'wall' || kind === 'door' ? 'horizontal' : 'up',
  sheltered: other !== 'outdoors' && other !== 'ground',
});

/**
 * U of a construction in its place, W/(m²K): a figure entered, else its layers by the combined method, else the
 * common construction named, whose films are changed for those of this place. Layers go from the inside to the outside.
 */
export function assemblyU(assembly: Assembly, setting: Setting, s: Scenario, rec?: WorkingRecorder): number {
  if (!('missing' in assembly.uValue)) {
    rec?.given('U', assembly.uValue);
    return s.of(assembly.uValue);
  }
  if (Object.keys(assembly.layers).length === 0) return placedU(assembly, setting, s, rec);
  const { total } = combinedResistance(enteredResistances(assembly, s), filmsIn(setting), rec);
  rec?.step('U', '1 / R_T', { R_T: total }, 1 / total, 'W/(m²K)', 'iso-6946.combined');
  return 1 / total;
}

/** The common construction's U where it stands. */
function placedU({ common }: Assembly, setting: Setting, s: Scenario, rec?: WorkingRecorder): number {
  if ('missing' in common) return unresolved('missing', common.path);
  const given = commonU(common);
  const u = s.of(given);
  if (rec) libraryU(common.choice, 1, rec);
  rec?.given('U', given);
  const R_own = bothFilms(filmsOf(library[common.choice].place));
  const R_here = bothFilms(filmsIn(setting));
  if (R_own === R_here) return u;
  const placed = 1 / (1 / u - R_own + R_here);
  rec?.step('U', '1 / (1 / U_own - R_own + R_here)', { U_own: u, R_own, R_here }, placed, 'W/(m²K)', 'iso-6946.films');
  return placed;
}
