import { type Given, inOrder, type ResolvedProject } from '@kneewall/project';
import { extraterrestrialDay, meanDays, solarConstant } from '../physics/sun/index.ts';
import { attempt, type Outcome, unresolved } from '../plan/outcome.ts';
import type { Scenario } from '../plan/scenario.ts';
import type { ClimateMonth } from './result.ts';

type Site = ResolvedProject['site'];

/** How far the coldest month's mean stands above a cold night, the hottest below a hot afternoon, K. Source: `climate.assumed`. */
const assumedOffsets = {
  coast: { winter: 8, summer: 7, lag: 1.2 },
  inland: { winter: 11, summer: 8.5, lag: 0.7 },
} as const;
const assumedRange = { coast: 6.5, inland: 12 } as const;
const assumedHumidity = { coast: 0.8, inland: 0.62 } as const;
const assumedWind = { coast: 5.5, inland: 3.5 } as const;
/** Clearness of an ordinary month, winter and summer. */
const assumedClearness = { coast: [0.36, 0.46], inland: [0.46, 0.54] } as const;

/** Twelve months from published normals, or assumed from four answers. */
export function monthsOf(site: Site, s: Scenario): Outcome<readonly ClimateMonth[]> {
  return attempt(() => (Object.keys(site.normals).length > 0 ? fromNormals(site, s) : fromAnswers(site, s)));
}

function fromNormals(site: Site, s: Scenario): ClimateMonth[] {
  const latitude = s.of(site.latitude);
  const rows = inOrder(site.normals).map(([, row]) => ({ month: s.of(row.month), row }));
  return Array.from({ length: 12 }, (_, i) => {
    const found = rows.find((r) => r.month === i + 1);
    if (!found) return unresolved('missing', `site.normals (month ${i + 1})`);
    const { row } = found;
    const clearness = s.of(row.clearness);
    return {
      month: i + 1,
      mean: s.of(row.mean),
      dailyRange: s.of(row.dailyRange),
      relativeHumidity: s.of(row.humidity),
      wind: s.of(row.wind),
      clearness,
      sun: sunOnLevel(latitude, i, clearness),
    };
  });
}

function fromAnswers(site: Site, s: Scenario): ClimateMonth[] {
  const latitude = s.of(site.latitude);
  const coast = s.choice(site.coast);
  const offset = assumedOffsets[coast];
  const coldest = s.of(site.coldNight) + offset.winter;
  const hottest = s.of(site.hotAfternoon) - offset.summer;
  const [dull, clear] = assumedClearness[coast];
  return Array.from({ length: 12 }, (_, i) => {
    // -1 in the coldest month, +1 in the hottest; south of the equator the year is turned round.
    const phase = Math.cos((2 * Math.PI * (i - 6 - offset.lag)) / 12) * (latitude < 0 ? -1 : 1);
    const share = (1 + phase) / 2;
    const clearness = dull + (clear - dull) * share;
    return {
      month: i + 1,
      mean: coldest + (hottest - coldest) * share,
      dailyRange: assumedRange[coast],
      relativeHumidity: assumedHumidity[coast],
      wind: assumedWind[coast],
      clearness,
      sun: sunOnLevel(latitude, i, clearness),
    };
  });
}

const sunOnLevel = (latitude: number, month: number, clearness: number): number =>
  clearness * extraterrestrialDay(latitude, meanDays[month] ?? 17, solarConstant);

/** An input that nobody entered and that follows from other answers, as wide as such a guess is. */
export const guessed = (
  path: string,
  kind: Given['kind'],
  likely: number,
  low: number,
  high: number,
  known: Given['known'] = 'assumed',
): Given => ({ path, kind, low, likely, high, known });
