import type { LogHours, LogQuantity } from '@kneewall/project';
import { plannedHeat, type SpeedLine } from './plannedPower.ts';
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
  readonly wind?: Float64Array;
};

/** Air flow for logs without one, m³/s; the plan's sheet; Pa of air over that of sea level. */
export type HeatGiven = {
  readonly airflow?: number;
  readonly lines: readonly SpeedLine[];
  readonly density: number;
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
    ...(sun ? { sun } : {}),
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

function heatOf(columns: Columns, { airflow, lines, density }: HeatGiven) {
  const { heat, supply, return: back, flow, unitPower, outdoor } = columns;
  if (heat) return { heat, from: 'meter' as const };
  if (supply && back && (flow || airflow !== undefined))
    return {
      heat: supply.map(
        (t, h) => (flow?.[h] ?? airflow ?? Number.NaN) * heatOfAir * density * (t - (back[h] ?? Number.NaN)),
      ),
      from: 'air' as const,
    };
  if (!unitPower || !outdoor || lines.length === 0) return undefined;
  return { heat: unitPower.map((p, h) => plannedHeat(lines, outdoor[h] ?? 0, p)), from: 'sheet' as const };
}
