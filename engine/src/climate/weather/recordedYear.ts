import { asked, type Problem, type Project, refused } from '@kneewall/project';
import { readWeather, type WeatherRead } from './read.ts';

type Site = NonNullable<Project['site']>;
export type RecordedEntry = NonNullable<Site['recorded']>[string];

/** km from the house beyond which a file is asked about, and beyond which its winters are not the house's. Source: `climate.recorded`. */
const far = 50;
const elsewhere = 300;

/**
 * Reads a recorded year as an entry of the project says: like the weather file, and held against where the house
 * stands. Never throws; every problem names the file first.
 */
export function readRecorded(text: string, entry: RecordedEntry, site: Site | undefined): WeatherRead {
  const columns = site?.weather?.columns;
  const { format, name = 'recorded year' } = entry;
  const read = readWeather(text, { ...(format ? { format } : {}), ...(columns ? { columns } : {}) }, site);
  const place = read.value ? otherPlace(read.value, site) : [];
  const problems = [...read.problems, ...place].map((p) => ({ ...p, path: [name, ...p.path] }));
  return problems.some((p) => p.grade === 'refused') || !read.value ? { problems } : { value: read.value, problems };
}

/** km between two places on the earth's surface, degrees; a sphere of 6371 km. */
export function kilometresApart(a: readonly [number, number], b: readonly [number, number]): number {
  const [latA, lonA, latB, lonB] = [...a, ...b].map((x) => (x * Math.PI) / 180) as [number, number, number, number];
  const half = Math.sin((latB - latA) / 2) ** 2 + Math.cos(latA) * Math.cos(latB) * Math.sin((lonB - lonA) / 2) ** 2;
  return 2 * 6371 * Math.asin(Math.min(1, Math.sqrt(half)));
}

function otherPlace(
  year: { readonly latitude: number; readonly longitude: number },
  site: Site | undefined,
): Problem[] {
  const [latitude, longitude] = [site?.latitude, site?.longitude].map((x) =>
    typeof x?.value === 'number' ? x.value : x?.value.likely,
  );
  if (latitude === undefined || longitude === undefined) return [];
  const away = kilometresApart([latitude, longitude], [year.latitude, year.longitude]);
  if (away <= far) return [];
  const found = `${Math.round(away)} km from the house`;
  const path = ['line', 1];
  return away > elsewhere
    ? [
        refused(
          'other-place',
          path,
          'These are the winters of another place. Take a file of a station near the house.',
          {
            found,
            allowed: `within ${elsewhere} km`,
          },
        ),
      ]
    : [
        asked(
          'other-place',
          path,
          'Is there a file of a nearer station? What is promised is promised for that place.',
          {
            found,
            allowed: `within ${far} km`,
          },
        ),
      ];
}
