import { inIdOrder } from '@kneewall/project';
import type { WallLayer } from '../physics/building/index.ts';
import { daysInMonth } from '../physics/calendar.ts';
import { insideFilm, outsideFilm } from '../physics/conduction/index.ts';
import { type Interstitial, interstitial, saturationMagnus, vapourExcess } from '../physics/moisture/index.ts';
import type { Draft } from '../plan/judge.ts';
import { attempt, required } from '../plan/outcome.ts';
import { scenario } from '../plan/scenario.ts';
import type { PlanView } from '../plan/trade.ts';
import { recordWorking, type Working } from '../plan/working.ts';
import type { ShellSurface } from './dynamic/shell.ts';
import { shellOfRooms } from './dynamic/shellOfRooms.ts';

type Found = { readonly draft: Draft; readonly working: Working };

/** kg/m² above which water inside a wall may run. Source: `loads.inside-wall`. */
const runs = 0.2;
/**
 * What nobody can see, from dry to damp: the room's humidity class, and how paint and paper on the warm side hold vapour
 * up, m of air (kraft paper or old oil paint 3, ordinary coats 0.7, bare board 0.1). Sources: `iso-13788.classes`,
 * `loads.paint` (common practice).
 */
const cases = {
  low: { humidityClass: 1, paint: 3 },
  likely: { humidityClass: 2, paint: 0.7 },
  high: { humidityClass: 3, paint: 0.1 },
} as const;
type Case = (typeof cases)[keyof typeof cases];
/** Boards outside have joints: they hold vapour up by a third of what whole wood would. Source: `loads.paint`. */
const joints = 0.3;

/** Water that gathers inside each construction between rooms and the weather, as its worst surface stands. */
export function wetLayers(view: PlanView): Found[] {
  const { house } = view.project;
  const shell = attempt(() => shellOfRooms(house, scenario()));
  if (!shell.ok || shell.value.rooms.length === 0) return [];
  const worst = new Map<string, ShellSurface>();
  for (const x of shell.value.surfaces) {
    const assembly = house.surfaces[x.id]?.assembly;
    if (assembly === undefined || (x.behind !== 'outdoors' && x.behind !== 'attic') || x.part === 'doors') continue;
    if (!worst.has(assembly)) worst.set(assembly, x);
  }
  return inIdOrder(Object.fromEntries(worst)).map(([id, x]) => gathered(id, x, view));
}

function gathered(id: string, x: ShellSurface, view: PlanView): Found {
  const { recorder, steps } = recordWorking();
  const name = view.project.house.assemblies[id]?.name ?? id;
  let left = 0;
  const value = attempt(() => {
    const at = (of: Case): Interstitial => waterIn(x, view, of);
    const [low, likely, high] = [at(cases.low), at(cases.likely), at(cases.high)];
    left = likely.left / 1000;
    recorder.step('m', 'table', {}, likely.most, 'g/m²', 'iso-13788.interstitial');
    recorder.step('M', 'm / 1000', { m: likely.most }, likely.most / 1000, 'kg', 'iso-13788.interstitial');
    return { low: low.most / 1000, likely: likely.most / 1000, high: high.most / 1000 };
  });
  return {
    draft: {
      id: `wet-layers:${id}`,
      subject: id,
      holdPoint: 'close',
      consequence: 'damage',
      kind: 'mass',
      value,
      limit: { max: runs },
      source: 'loads.inside-wall',
      working: `loads/wet-layers:${id}`,
      facts: { name, left },
    },
    working: steps,
  };
}

function waterIn(x: ShellSurface, view: PlanView, { humidityClass, paint }: Case): Interstitial {
  const { climate } = view.trades;
  const months = climate ? required(climate.months) : [];
  const heated = scenario().of(view.project.house.setpoints.heating);
  const direction = x.tilt > 60 && x.tilt < 120 ? 'horizontal' : 'up';
  return interstitial(
    x.layers.map((l, i) => {
      const outer = i === x.layers.length - 1 && x.behind === 'outdoors';
      const sd = airOf(l) * (outer && isWood(l) ? joints : 1) + (i === 0 ? paint : 0);
      return { resistance: resistanceOf(l), sd };
    }),
    { inside: insideFilm[direction], outside: x.behind === 'attic' ? insideFilm[direction] : outsideFilm },
    months.map((m) => {
      const p = m.relativeHumidity * saturationMagnus(m.mean);
      return {
        days: daysInMonth[m.month - 1] ?? 30,
        inside: { t: Math.max(heated, m.mean), p: p + vapourExcess(humidityClass, m.mean) },
        outside: { t: m.mean, p },
      };
    }),
  );
}

const resistanceOf = (l: WallLayer): number => ('resistance' in l ? l.resistance : l.thickness / l.conductivity);

const isWood = (l: WallLayer): boolean => 'density' in l && l.density >= 120 && l.density < 650;

/** m of air that hold vapour up as a layer does: by its weight, wool 1, wood 50, gypsum 8, masonry 20 times air. Source: `loads.vapour-factors`. */
function airOf(l: WallLayer): number {
  if ('resistance' in l) return 0.01;
  const times = l.density < 120 ? 1 : l.density < 650 ? 50 : l.density < 1100 ? 8 : 20;
  return times * l.thickness;
}
