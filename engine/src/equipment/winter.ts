import { attempt } from '../plan/outcome.ts';
import { heatOfYear, type Upstream } from './ownSeason.ts';
import type { UnitModel, Winter, WinterBin } from './result.ts';
import { helpOf, stopsAt } from './season.ts';

/** K of outdoor temperature in one bin of the winter; four make 10 °C or 18 °F. */
const binWidth = 2.5;

/**
 * The heating hours of the year by outdoor temperature and by how the unit would run in them. Help comes before
 * stopping: a unit that may not run does not stop and start. Hours colder than its coldest row stand apart, as do all
 * hours without help where the sheet shows no lowest speed.
 */
export function winterOf(unit: UnitModel, upstream: Upstream, outdoorLeast: number | undefined): Winter {
  const help = helpOf(unit, upstream, outdoorLeast);
  const stops = attempt(() => stopsAt(unit, upstream));
  const bins = new Map<number, WinterBin>();
  for (const met of heatOfYear(upstream).met) {
    const from = Math.floor(met.outdoor / binWidth) * binWidth;
    const bin = bins.get(from) ?? { from, holding: 0, stopStart: 0, helped: 0, beyond: 0 };
    const helped = help(met);
    const way =
      helped === 'certain'
        ? 'helped'
        : helped === 'open'
          ? 'beyond'
          : stops.ok && stops.value(met)
            ? 'stopStart'
            : 'holding';
    bins.set(from, { ...bin, [way]: bin[way] + met.hours });
  }
  return { bins: [...bins.values()].sort((a, b) => a.from - b.from), width: binWidth, lowestKnown: stops.ok };
}
