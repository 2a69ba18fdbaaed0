import type { Range } from '@kneewall/project';
import type { ClimateResult } from '../climate/result.ts';
import type { LoadsResult } from '../loads/result.ts';
import { required } from '../plan/outcome.ts';
import type { Place } from './result.ts';
import { frostsAt } from './stretches.ts';

/** °C of a heated house on its coldest night. Source: `condensate.coldest`. */
const insideLeast = 12;

/**
 * The coldest air at a place, °C: of the cold night as uncertain as it is, and of the house's own year once that is known.
 * The space below is known by that year alone, and until then counts as outdoors; in a colder night than the year has it
 * falls at most by as much as the air outdoors does.
 */
export function coldestAt(
  place: Place,
  { climate, loads }: { readonly climate: ClimateResult; readonly loads: LoadsResult },
): Range {
  if (place === 'inside') return { low: insideLeast, likely: insideLeast, high: insideLeast };
  const lowest = frostsAt(place, loads)?.lowest;
  const { outdoor } = required(climate.night);
  if (place === 'below' && lowest !== undefined) {
    const colder = Math.max(0, (frostsAt('outdoors', loads)?.lowest ?? outdoor.likely) - outdoor.low);
    return { low: lowest - colder, likely: lowest, high: lowest };
  }
  const night = place === 'attic' ? required(loads.atticNight) : outdoor;
  const at = (end: keyof Range): number => Math.min(night[end], lowest ?? night[end]);
  return { low: at('low'), likely: at('likely'), high: at('high') };
}
