import { asked, type Problem } from '@kneewall/project';
import { type SpareColumn, spareColumns } from './rows.ts';
import type { WeatherYear } from './weatherYear.ts';

/** What can be: cover in full tenths, and the heat of a sky between the coldest known and a hot, damp, dull one. */
const possible: Readonly<Record<SpareColumn, readonly [number, number]>> = { cloud: [0, 1], skyInfrared: [40, 700] };

const instead: Readonly<Record<SpareColumn, string>> = {
  cloud:
    'Cloud is missing here, so none of it is used; it is estimated from the sun. Get the file again to use its own.',
  skyInfrared:
    'Heat from the sky is missing here, so none of it is used; it is estimated from cloud or sun. Get the file again to use its own.',
};

/** A column a year can do without is left out whole where one of its numbers cannot be, and that is said. */
export function soundSpares(year: WeatherYear): { readonly year: WeatherYear; readonly problems: Problem[] } {
  const problems: Problem[] = [];
  let sound = year;
  for (const c of spareColumns) {
    const [min, max] = possible[c];
    const at = year[c]?.findIndex((x) => !(x >= min && x <= max)) ?? -1;
    if (at < 0) continue;
    const found = year[c]?.[at];
    const { [c]: _left, ...rest } = sound;
    sound = rest;
    problems.push(
      asked('impossible-value', ['row', at + 1, c], instead[c], {
        found: Number.isFinite(found) ? found : 'no number',
        allowed: { min, max },
      }),
    );
  }
  return { year: sound, problems };
}
