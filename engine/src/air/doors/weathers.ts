import { airDensity } from '../../physics/air/index.ts';
import { type Envelope, eaveWind, stackGradient } from '../../physics/infiltration/index.ts';
import type { Weather } from './houseAir.ts';

export type WeatherId = 'calm' | 'cold' | 'windy';
export type WeatherCase = { readonly id: WeatherId; readonly weather?: Weather };

/** m/s at a weather station: a fresh breeze, which most places see on many days. Source: `air.weather-cases`. */
const freshBreeze = 10;
/** Degrees from north: nobody knows from where it will blow. */
const ways = [0, 90, 180, 270] as const;

/** °C indoors and outdoors on the cold night, how the house stands in the wind, Pa of the atmosphere. */
export type Climate = {
  readonly indoor: number;
  readonly outdoor: number;
  readonly envelope: Pick<Envelope, 'storeys' | 'shelter'>;
  readonly pressure: number;
};

/** A cold and still night, and a fresh breeze from each of four ways with no difference of temperature. */
export function weatherCases({ indoor, outdoor, envelope, pressure }: Climate): readonly WeatherCase[] {
  const inside = airDensity(indoor, pressure);
  const rise = Math.max(0, stackGradient(airDensity(outdoor, pressure), inside));
  const wind = (inside / 2) * eaveWind(envelope, freshBreeze) ** 2;
  return [
    { id: 'cold', weather: { rise, wind: 0, from: 0 } },
    ...ways.map((from): WeatherCase => ({ id: 'windy', weather: { rise: 0, wind, from } })),
  ];
}

/** Nothing blows and nothing is warmer than outdoors: what tests of flues and doors are held against. */
export const calm: WeatherCase = { id: 'calm' };
