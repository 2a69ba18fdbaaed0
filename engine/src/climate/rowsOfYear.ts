import { humidityRatio, standardPressure } from '../physics/air/index.ts';
import type { WeatherRows } from '../physics/building/index.ts';
import type { WeatherYear } from './weather/weatherYear.ts';

/**
 * A weather year as the heat balance takes it, with the sky's temperature by row, °C. A typical-year file of the TMY3
 * kind states air at the end of each row's hour, the others at the moment at which their sun stands.
 */
export function rowsOfYear(year: WeatherYear, sky: Float64Array, horizon: WeatherRows['horizon'] = []): WeatherRows {
  return {
    rowSeconds: year.stepSeconds,
    firstDay: 0,
    latitude: year.latitude,
    longitude: year.longitude,
    timeZone: year.timeZone,
    pressure: standardPressure(year.elevation),
    sunOffset: year.sunOffset,
    airOffset: year.format === 'tmy3' ? year.stepSeconds : year.sunOffset,
    dryBulb: year.dryBulb,
    humidityRatio: year.dryBulb.map((t, i) =>
      humidityRatio({ t, rh: year.relativeHumidity[i] ?? 0 }, year.pressure[i] ?? 101_325),
    ),
    windSpeed: year.windSpeed,
    sky,
    dni: year.dni,
    dhi: year.dhi,
    horizon,
  };
}
