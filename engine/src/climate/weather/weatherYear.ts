/**
 * A year of weather in equal steps from 1 January 00:00 local standard time. One array a quantity, one row a step:
 * °C, fraction, Pa, m/s, degrees clockwise from north, W/m² on the level, to the sun, from the sky.
 */
export type WeatherYear = {
  readonly kind: 'weather-year';
  readonly name: string;
  readonly format: string;
  readonly stepSeconds: number;
  readonly latitude: number;
  readonly longitude: number;
  readonly elevation: number;
  /** Hours from Greenwich. */
  readonly timeZone: number;
  /** Seconds from the beginning of a row to the moment at which its sun stands. */
  readonly sunOffset: number;
  readonly dryBulb: Float64Array;
  readonly dewPoint: Float64Array;
  readonly relativeHumidity: Float64Array;
  readonly pressure: Float64Array;
  readonly windSpeed: Float64Array;
  readonly windDirection: Float64Array;
  readonly ghi: Float64Array;
  readonly dni: Float64Array;
  readonly dhi: Float64Array;
  /** Share of the sky covered by cloud that hides the blue, 0 to 1; where the file states it. */
  readonly cloud?: Float64Array;
  /** Heat from the sky on the level, W/m²; where the file states it. */
  readonly skyInfrared?: Float64Array;
};

export const isWeatherYear = (x: unknown): x is WeatherYear =>
  x !== null && typeof x === 'object' && (x as { kind?: unknown }).kind === 'weather-year';
