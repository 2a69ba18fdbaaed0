// Sources: cloud as observed in TMY3 files (NREL), heat from the sky as in the PVGIS typical year (JRC). See README.md.
import { estimatedCloud, skyTemperatures, type WeatherYear } from '@kneewall/engine';
import { skyRadiation } from '@kneewall/engine/physics';
import { type Row, row } from '../src/row.ts';
import { weatherYear } from '../weather-files/files.ts';

const mean = (x: Float64Array): number => x.reduce((a, b) => a + b, 0) / x.length;
const heatOf = (sky: Float64Array): Float64Array => sky.map((t) => skyRadiation(t, 1));
const without = ({ cloud: _cloud, skyInfrared: _heat, ...rest }: WeatherYear): WeatherYear => rest;

const observed = [
  ['Sand Point', 'tmy3_703165_sand_point_ak.csv', 0.69847],
  ['Greensboro', 'tmy3_723170_greensboro_nc.csv', 0.480947],
  ['Denver', 'tmy3_725650_denver_intl_co.csv', 0.437443],
] as const;

/** Cover by cloud told from the sun, and the sky it makes, against the cloud somebody saw; then against measured heat. */
export function estimatedSky(source: string): Row[] {
  return [
    ...observed.flatMap(([place, file, cover]) => {
      const year = weatherYear(file, 'tmy3');
      const estimated = without(year);
      const say = (field: string, unit: string, expected: number, tolerance: number, ours: number) =>
        row({ source, case: place, field, unit, expected, tolerance, known: 'computed' }, ours);
      const seen = mean(heatOf(skyTemperatures(year)));
      return [
        say('cloud as read, mean', '', cover, 1e-6, mean(year.cloud ?? new Float64Array())),
        // A tenth is the step in which cloud is observed.
        say('cloud from the sun, mean', '', cover, 0.06, mean(estimatedCloud(estimated))),
        say('heat from the sky by either, mean', 'W/m²', seen, 3, mean(heatOf(skyTemperatures(estimated)))),
      ];
    }),
    ...pvgis(source),
  ];
}

/** The estimate turns a mean 9 W/m² low with a clear sky into one 10 W/m² high, and scatters less hour by hour. */
function pvgis(source: string): Row[] {
  const year = weatherYear('pvgis_tmy_45.000_8.000.csv', 'pvgis-csv');
  const measured = year.skyInfrared ?? new Float64Array(0);
  const ours = heatOf(skyTemperatures(without(year)));
  const name = 'PVGIS year at 45 N 8 E, cloud from the sun';
  const say = { source, case: name, unit: 'W/m²', known: 'computed' } as const;
  const scatter = Math.sqrt(mean(ours.map((x, i) => (x - (measured[i] ?? Number.NaN)) ** 2)));
  return [
    row({ ...say, field: 'mean as read', expected: 322.07, tolerance: 0.01 }, mean(measured)),
    row(
      { ...say, field: 'heat by the sky’s temperature', expected: 322.07, tolerance: 0.01 },
      mean(heatOf(skyTemperatures(year))),
    ),
    row({ ...say, field: 'mean', expected: 322.07, tolerance: 10.5 }, mean(ours)),
    // A clear sky by the same formula scatters by 30.4 W/m².
    row({ ...say, field: 'scatter', low: 0, high: 24, tolerance: 0 }, scatter),
  ];
}
