import { readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import { readWeather, type WeatherFormat, type WeatherYear } from '@kneewall/engine';

/** The text of one of the weather files kept here. */
export const weatherText = (name: string): string =>
  gunzipSync(readFileSync(new URL(`./data/${name}.gz`, import.meta.url))).toString('utf8');

/** The same, read; throws when it is refused, which none of these may be. */
export function weatherYear(name: string, format: WeatherFormat): WeatherYear {
  const { value, problems } = readWeather(weatherText(name), { format }, undefined);
  if (!value) throw new Error(`${name} was refused: ${JSON.stringify(problems[0])}`);
  return value;
}
