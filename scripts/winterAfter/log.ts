import type { ExpectedUnit } from '../../engine/src/commissioning/logs/logHours.ts';
import { weatherOfYear, yearTable } from '../../engine/src/coupling/houseYear/table.ts';
import type { WeatherYear, YearInputs } from '../../engine/src/index.ts';
import { chanceFrom } from '../../engine/test/commissioning/chance.ts';

type House = YearInputs['house'];
type Hours = { readonly heat: Float64Array; readonly indoor: Float64Array };

/** Days of the made year from 15 November on, through New Year. */
const [firstDay, days, newYear] = [318, 121, 365] as const;
/** Its own winter: not the one that the plan's year is made of. */
const weatherSeed = 2027;
const noiseSeed = 1115;
const householdSeed = 1116;
/** W per K against the plan's own house in the same weather, and W drawn against what the plan expects for that heat. */
const lossTimes = 1.2;
const drawTimes = 1.04;
/** kWh a day beside the unit: more than was entered, and most of it in the evening. */
const householdDaily = 7;
const householdShape = [4, 4, 4, 4, 4, 5, 8, 12, 10, 8, 8, 9, 11, 9, 8, 8, 10, 15, 21, 22, 19, 14, 9, 6] as const;

/**
 * A winter's hours as the owner's meters wrote them, as CSV: the plan's own heat balance with every wall, window and leak
 * letting more through, until it loses `lossTimes` as much, thermometers that scatter by 0.2 K and 0.1 K and a heat meter by 3 %. `told` gives by
 * how much everything was made to let through, and from three degrees colder outdoors the loss of that house and of the plan's own, W/K.
 */
export function winterLog(inputs: YearInputs, unit: ExpectedUnit): { csv: string; told: readonly number[] } {
  if (inputs.weather.kind !== 'months') throw new Error('made from months');
  const year = weatherOfYear({ ...inputs.weather, seed: weatherSeed }, () => {
    throw new Error('made from months');
  });
  const plain = lossOf(inputs, inputs.house, year);
  const times = timesFor(inputs, plain, year);
  const worse = leakier(inputs.house, times);
  return {
    csv: csvOf(year, hoursOf(inputs, worse, year), unit),
    told: [times, lossOf(inputs, worse, year), plain],
  };
}

/** Two secant steps from the plan's own house are near enough. */
function timesFor(inputs: YearInputs, plain: number, year: WeatherYear): number {
  const wanted = lossTimes * plain;
  let times = lossTimes;
  for (let i = 0; i < 2; i++) {
    const got = lossOf(inputs, leakier(inputs.house, times), year);
    times = 1 + ((times - 1) * (wanted - plain)) / (got - plain);
  }
  return times;
}

const leakier = (house: House, times: number): House => ({
  ...house,
  envelope: { ...house.envelope, coefficient: house.envelope.coefficient * times },
  shell: {
    ...house.shell,
    surfaces: house.shell.surfaces.map((s) => ({
      ...s,
      layers: s.layers.map((l) => ({ ...l, ...('conductivity' in l ? { conductivity: l.conductivity * times } : {}) })),
      windows: s.windows.map((w) => ({ ...w, u: w.u * times })),
    })),
  },
});

function hoursOf(inputs: YearInputs, plain: House, weather: WeatherYear): Hours {
  // Nobody cools: what is heated is all that is given.
  const house = { ...plain, wanted: { ...plain.wanted, cooling: 60 } };
  const { record, rooms, zones, rows } = yearTable({ ...inputs, house, step: 3600 }, weather, () => {}).loaded;
  const areas = house.shell.rooms.map((r) => r.floorArea);
  const all = areas.reduce((a, b) => a + b, 0);
  const at = rooms.map((r) => zones.indexOf(r));
  const sum = (of: (k: number) => number): number => rooms.reduce((a, _, k) => a + of(k), 0);
  return {
    heat: Float64Array.from({ length: rows }, (_, h) => sum((k) => record.heating[h * rooms.length + k] ?? 0)),
    indoor: Float64Array.from({ length: rows }, (_, h) =>
      sum((k) => ((areas[k] ?? 0) / all) * (record.temperature[h * zones.length + (at[k] ?? 0)] ?? 0)),
    ),
  };
}

const hourOf = (row: number): number => 24 * ((firstDay + Math.floor(row / 24)) % newYear) + (row % 24);

function lossOf(inputs: YearInputs, house: House, year: WeatherYear): number {
  const by3 = (x: Float64Array): Float64Array => x.map((t) => t - 3);
  const colder = { ...year, dryBulb: by3(year.dryBulb), dewPoint: by3(year.dewPoint) };
  const [cold, mild] = [hoursOf(inputs, house, colder).heat, hoursOf(inputs, house, year).heat];
  let sum = 0;
  for (let row = 0; row < 24 * days; row++) sum += (cold[hourOf(row)] ?? 0) - (mild[hourOf(row)] ?? 0);
  return sum / (24 * days) / 3;
}

function csvOf(year: WeatherYear, { heat, indoor }: Hours, unit: ExpectedUnit): string {
  const { normal } = chanceFrom(noiseSeed);
  const beside = household();
  const begin = Date.UTC(2027, 10, 15);
  const rows = Array.from({ length: 24 * days }, (_, row) => {
    const h = hourOf(row);
    const [outdoor = 0, given = 0] = [year.dryBulb[h], heat[h]];
    const drawn = unit.power(outdoor, given) * drawTimes * (1 + 0.02 * normal());
    return [
      new Date(begin + 3_600_000 * row).toISOString().slice(0, 16).replace('T', ' '),
      (outdoor + 0.2 * normal()).toFixed(1),
      ((indoor[h] ?? 0) + 0.1 * normal()).toFixed(1),
      (given * (1 + 0.03 * normal())).toFixed(0),
      drawn.toFixed(0),
      (drawn + (beside[row] ?? 0)).toFixed(0),
      (year.ghi[h] ?? 0).toFixed(0),
      (year.windSpeed[h] ?? 0).toFixed(1),
    ].join(',');
  });
  return `${['time,outdoor C,indoor C,heat W,heat pump W,whole house W,sun W/m2,wind m/s', ...rows].join('\n')}\n`;
}

/** W by the hour: every day and hour a little different from the next. */
function household(): number[] {
  const { normal } = chanceFrom(householdSeed);
  const mean = householdShape.reduce((a, b) => a + b, 0) / 24;
  return Array.from({ length: days }, () => Math.exp(0.15 * normal() - 0.15 ** 2 / 2)).flatMap((day) =>
    householdShape.map((x) => ((householdDaily * 1000) / 24) * (x / mean) * day * (1 + 0.1 * normal())),
  );
}
