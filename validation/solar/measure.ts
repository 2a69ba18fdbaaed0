// Source of the table: pvlib at commit 6382338a (computed). See README.md.
import { readFileSync } from 'node:fs';
import {
  airMass,
  clearSky,
  extraterrestrialSpencer,
  isotropicSky,
  lightOnPlane,
  refraction,
  skyHayDavies,
  solarConstant,
  splitGlobal,
  sunPosition,
} from '@kneewall/engine/physics';
import { type Row, row, type ValidationSource } from '../src/row.ts';
import { planes } from './planes.ts';
import { airAndSplit, clearSkies, risings, textbook, workedExample } from './published.ts';

const id = 'solar';
const rad = Math.PI / 180;

/** One line of a table: its name, its cells by heading (NaN where empty), and how a row of it is said. */
type Line = {
  readonly name: string;
  readonly text: (heading: string) => string;
  readonly number: (heading: string) => number;
  readonly say: (field: string, unit: string, expected: number, ours: number, tolerance: number) => Row;
};

/** All rows of a table with the reference's columns. A column that is missing or empty is not checked. */
function measureTable(table: string): Row[] {
  const [head = [], ...records] = table
    .trim()
    .split(/\r?\n/)
    .map((l) => l.split(','));
  return records.flatMap((record) => {
    const text = (heading: string): string => record[head.indexOf(heading)] ?? '';
    const name = `${text('site')} ${text('time_utc')}`;
    const line: Line = {
      name,
      text,
      number: (heading) => (text(heading) === '' ? Number.NaN : Number(text(heading))),
      say: (field, unit, expected, ours, tolerance) =>
        row({ source: id, case: name, field, unit, expected, tolerance, known: 'computed' }, ours),
    };
    return [...measurePosition(line), ...measureLight(line), ...measurePlane(line)].filter(
      (r) => !Number.isNaN(r.expected),
    );
  });
}

/** Where the sun stands, within the project's goal of 0.01 degree: 0.04 minutes of the equation of time. */
function measurePosition({ text, number, say }: Line): Row[] {
  const time = Date.parse(`${text('time_utc').replace(' ', 'T')}Z`) / 1000;
  const sun = sunPosition({ time, latitude: number('lat_deg'), longitude: number('lon_deg_east') });
  const apparent = sun.zenith - refraction(sun.zenith, number('pressure_Pa'), number('temp_C'));
  const azimuth = number('azimuth_deg_from_north');
  const turn = ((sun.azimuth - azimuth + 540) % 360) - 180;
  const dayOfYear = Math.floor((time - Date.UTC(new Date(time * 1000).getUTCFullYear(), 0, 1) / 1000) / 86_400) + 1;
  const [spencer, exact] = [number('etr_normal_spencer_W_m2'), number('etr_normal_spa_W_m2')];
  return [
    say('zenith', '°', number('zenith_true_deg'), sun.zenith, 0.01),
    say('apparent zenith', '°', number('zenith_apparent_deg'), apparent, 0.01),
    say('azimuth', '°', azimuth, azimuth + turn * Math.sin(sun.zenith * rad), 0.01),
    say('equation of time', 'min', number('eq_of_time_min'), sun.equationOfTime, 0.04),
    say('outside the air, Spencer', 'W/m²', spencer, extraterrestrialSpencer(dayOfYear, solarConstant), 5e-4 * spencer),
    say('outside the air, true distance', 'W/m²', exact, solarConstant / sun.distance ** 2, 5e-4 * exact),
  ];
}

const lightTolerance = (expected: number): number => Math.max(0.05, 0.001 * Math.abs(expected));

/** Air mass and irradiances from the reference's own sun, so that they test the sky models alone. */
function measureLight({ text, number, say }: Line): Row[] {
  const zenith = number('zenith_apparent_deg');
  const outside = number('etr_normal_spencer_W_m2');
  const mass = number('airmass_rel_ky89');
  const light = (field: string, heading: string, ours: number) =>
    say(field, 'W/m²', number(heading), ours, lightTolerance(number(heading)));
  const sky =
    text('sky_source') === 'ineichen'
      ? clearSky(
          zenith,
          airMass(zenith) * (number('pressure_Pa') / 101_325),
          number('linke_or_kt'),
          number('elev_m'),
          outside,
        )
      : splitGlobal(number('linke_or_kt') * outside * Math.cos(zenith * rad), zenith, outside);
  return [
    say('air mass', '', mass, airMass(zenith), 0.001 * mass),
    light('global', 'ghi_W_m2', sky.global),
    light('direct normal', 'dni_W_m2', sky.beamNormal),
    light('diffuse', 'dhi_W_m2', sky.diffuse),
  ];
}

/** Light on a tilted plane, from the reference's sun and irradiances. */
function measurePlane({ number, say }: Line): Row[] {
  const sun = { zenith: number('zenith_apparent_deg'), azimuth: number('azimuth_deg_from_north') };
  const outside = number('etr_normal_spencer_W_m2');
  const plane = { tilt: number('tilt_deg'), azimuth: number('surface_azimuth_deg') };
  const light = { global: number('ghi_W_m2'), beamNormal: number('dni_W_m2'), diffuse: number('dhi_W_m2') };
  const on = lightOnPlane(plane, sun, light, {
    mass: number('airmass_rel_ky89'),
    extraterrestrial: outside,
    reflectance: number('albedo'),
  });
  const falls = (field: string, heading: string, ours: number) =>
    say(field, 'W/m²', number(heading), ours, lightTolerance(number(heading)));
  return [
    say('incidence', '°', number('aoi_deg'), on.incidence, 0.001),
    falls('direct on the plane', 'poa_beam_W_m2', on.beam),
    falls('sky on the plane, isotropic', 'poa_sky_isotropic_W_m2', isotropicSky(plane.tilt, light.diffuse)),
    falls('sky on the plane, Hay and Davies', 'poa_sky_haydavies_W_m2', skyHayDavies(plane, sun, light, outside)),
    falls('sky on the plane', 'poa_sky_perez1990_W_m2', on.sky),
    falls('ground on the plane', 'poa_ground_W_m2', on.ground),
    falls('all on the plane', 'poa_global_perez_W_m2', on.total),
  ];
}

export const source: ValidationSource = {
  id,
  title: 'Sun and sky',
  measure: () => [
    ...workedExample(),
    ...risings(),
    ...textbook(),
    ...airAndSplit(),
    ...clearSkies(),
    ...planes(),
    ...measureTable(readFileSync(new URL('./solar_reference.csv', import.meta.url), 'utf8')),
  ],
  measureCase: (file) => measureTable(String(file)),
};
