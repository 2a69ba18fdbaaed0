// Source: PVGIS typical year 45 N 8 E (JRC) for the radiation; means of the formulas computed outside the project.
import { clarkAllenEmittance, clearSkyEmittance, skyRadiation, swinbankTemperature } from '@kneewall/engine/physics';
import { type Row, row } from '../src/row.ts';
import { weatherText } from '../weather-files/files.ts';

/** Dew point by the Magnus form of ISO 13788, over ice below zero, as in the reference computation: °C, %. */
function magnusDewPoint(air: number, humidity: number): number {
  const saturation = (t: number) => 610.5 * Math.exp(t < 0 ? (21.875 * t) / (265.5 + t) : (17.269 * t) / (237.3 + t));
  const x = Math.log((saturation(air) * humidity) / 100 / 610.5);
  return x < 0 ? (265.5 * x) / (21.875 - x) : (237.3 * x) / (17.269 - x);
}

/** Sky radiation of a whole year against the file's own, W/m². */
export function pvgisSky(source: string): Row[] {
  const hours = weatherText('pvgis_tmy_45.000_8.000.csv')
    .split(/\r?\n/)
    .filter((l) => /^\d{8}:\d{4},/.test(l))
    .map((l) => l.split(',').map(Number));
  const mean = (of: (air: number, dew: number, sky: number) => number): number =>
    hours.reduce((sum, [, t = Number.NaN, rh = Number.NaN, , , , ir = Number.NaN]) => {
      return sum + of(t, magnusDewPoint(t, rh), ir);
    }, 0) / hours.length;
  const models = [
    ['Berdahl and Martin', 297.2, (t: number, dew: number) => skyRadiation(t, clearSkyEmittance(dew))],
    ['Clark and Allen', 312.84, (t: number, dew: number) => skyRadiation(t, clarkAllenEmittance(dew))],
    ['Swinbank', 295.84, (t: number) => skyRadiation(swinbankTemperature(t), 1)],
  ] as const;
  const name = 'PVGIS year at 45 N 8 E';
  const say = (field: string, expected: number, ours: number, tolerance: number) =>
    row({ source, case: name, field, unit: 'W/m²', expected, tolerance, known: 'computed' }, ours);
  return [
    row(
      { source, case: name, field: 'hours', unit: '', expected: 8760, tolerance: 0, known: 'computed' },
      hours.length,
    ),
    say(
      'mean in the file',
      322.07,
      mean((_t, _dew, sky) => sky),
      0.01,
    ),
    ...models.flatMap(([model, expected, radiation]) => [
      say(`mean by ${model}`, expected, mean(radiation), 0.01),
      row(
        {
          source,
          case: name,
          field: `scatter by ${model}`,
          unit: 'W/m²',
          low: 30,
          high: 43,
          tolerance: 0.5,
          known: 'computed',
        },
        Math.sqrt(mean((t, dew, sky) => (radiation(t, dew) - sky) ** 2)),
      ),
    ]),
  ];
}
