import type { LogHours, LogQuantity } from '@kneewall/project';
import type { HeatFrom } from './result.ts';

/** J/(m³ K) of air at 20 °C and 1013 hPa: 1.204 kg/m³ × 1006 J/(kg K). Source: `commissioning.heat-of-air`. */
const heatOfAir = 1211;

/** A log as a house by the hour; NaN where an hour lacks it. */
export type HouseLog = {
  readonly first: number;
  readonly outdoor: Float64Array;
  readonly indoor: Float64Array;
  readonly ends: Float64Array;
  readonly heat: Float64Array;
  readonly heatFrom: HeatFrom;
  readonly power?: Float64Array;
  readonly sun?: Float64Array;
  /** Whether that is sun on the level, W/m², or the power of panels. */
  readonly sunIs?: 'measured' | 'panels';
  readonly wind?: Float64Array;
};

/** Air flow for logs without one, m³/s; Pa of air over that of sea level; the plan's unit. */
export type HeatGiven = {
  readonly airflow?: number;
  readonly density: number;
  readonly expected?: ExpectedUnit;
  /** The plan's own house in the hours of a log, as that log would have written it. */
  readonly planned?: (log: HouseLog) => HouseLog;
};

/** W drawn for so many W of heat at an outdoor temperature, and the heat that so many W drawn give. */
export type ExpectedUnit = {
  readonly power: (outdoor: number, heat: number) => number;
  readonly heat: (outdoor: number, power: number) => number;
};

/** Takes from a log's hours what fits need; undefined without outdoor and indoor air and some way to heat. */
export function houseLog(hours: LogHours, given: HeatGiven): HouseLog | undefined {
  const { columns, first } = hours;
  const { outdoor, unitPower: power, wind } = columns;
  const indoor = meanOf(hours.columns);
  const ends = meanOf(hours.ends);
  const heat = heatOf(columns, given);
  if (!outdoor || !indoor || !ends || !heat) return undefined;
  const sun = columns.sun ?? columns.sunPower;
  return {
    first,
    outdoor,
    indoor,
    ends,
    heat: heat.heat,
    heatFrom: heat.from,
    ...(power ? { power } : {}),
    ...(sun ? { sun, sunIs: columns.sun ? 'measured' : 'panels' } : {}),
    ...(wind ? { wind } : {}),
  };
}

type Columns = LogHours['columns'];

/** The mean of the places indoors that an hour knows. */
function meanOf(columns: Columns): Float64Array | undefined {
  const places = (['indoor', 'indoor2', 'indoor3'] as const).flatMap((id: LogQuantity) => columns[id] ?? []);
  const [first] = places;
  return first?.map((_, h) => {
    const known = places.map((p) => p[h] ?? Number.NaN).filter((t) => !Number.isNaN(t));
    return known.reduce((a, b) => a + b, 0) / known.length;
  });
}

function heatOf(columns: Columns, { airflow, density, expected }: HeatGiven) {
  const { heat, supply, return: back, flow, unitPower, outdoor } = columns;
  if (heat) return { heat, from: 'meter' as const };
  if (supply && back && (flow || airflow !== undefined))
    return {
      heat: supply.map(
        (t, h) => (flow?.[h] ?? airflow ?? Number.NaN) * heatOfAir * density * (t - (back[h] ?? Number.NaN)),
      ),
      from: 'air' as const,
    };
  if (!unitPower || !outdoor || !expected) return undefined;
  return { heat: unitPower.map((p, h) => expected.heat(outdoor[h] ?? Number.NaN, p)), from: 'sheet' as const };
}
