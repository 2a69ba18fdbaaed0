// Sources: pvlib at commit 6382338a (computed), Reda & Andreas 2008 (looked up). See README.md.
import { readFileSync } from 'node:fs';
import {
  airMass,
  clearSky,
  diffuseShare,
  groundOnPlane,
  incidenceCosine,
  refraction,
  skyOnPlane,
  sunPosition,
} from '@kneewall/engine/physics';
import { type Row, row, type ValidationSource } from '../src/row.ts';

const id = 'solar';
const rad = Math.PI / 180;
/** All rows of a table with the reference's columns. */
function measureTable(text: string): Row[] {
  const [head = [], ...records] = text
    .trim()
    .split(/\r?\n/)
    .map((l) => l.split(','));
  return records.flatMap((record) => measureRecord(head, record));
}

function measureRecord(head: readonly string[], record: readonly string[]): Row[] {
  const text = (name: string): string => record[head.indexOf(name)] ?? '';
  const number = (name: string): number => Number(text(name));
  const name = `${text('site')} ${text('time_utc')}`;
  const at = {
    time: Date.parse(`${text('time_utc').replace(' ', 'T')}Z`) / 1000,
    latitude: number('lat_deg'),
    longitude: number('lon_deg_east'),
  };
  const sun = sunPosition(at);
  const apparent = sun.zenith - refraction(sun.zenith, number('pressure_Pa'), number('temp_C'));
  const turn = ((sun.azimuth - number('azimuth_deg_from_north') + 540) % 360) - 180;
  const angle = (field: string, expected: number, ours: number) =>
    row({ source: id, case: name, field, unit: '°', expected, tolerance: 0.01, known: 'computed' }, ours);
  const positions = [
    angle('zenith', number('zenith_true_deg'), sun.zenith),
    angle('apparent zenith', number('zenith_apparent_deg'), apparent),
    angle('azimuth on the sky', 0, turn * Math.sin(sun.zenith * rad)),
  ];
  return text('ghi_W_m2') === '' ? positions : [...positions, ...measureLight(name, text, number)];
}

/** Irradiances from the reference's own sun, so that they test the sky models alone. */
function measureLight(name: string, text: (n: string) => string, number: (n: string) => number): Row[] {
  const sun = { zenith: number('zenith_apparent_deg'), azimuth: number('azimuth_deg_from_north') };
  const outside = number('etr_normal_spencer_W_m2');
  const light = { beamNormal: number('dni_W_m2'), diffuse: number('dhi_W_m2') };
  const plane = { tilt: number('tilt_deg'), azimuth: number('surface_azimuth_deg') };
  const say = (field: string, expected: number, ours: number) =>
    row(
      {
        source: id,
        case: name,
        field,
        unit: 'W/m²',
        expected,
        tolerance: Math.max(0.05, 0.001 * Math.abs(expected)),
        known: 'computed',
      },
      ours,
    );
  const sky =
    text('sky_source') === 'ineichen'
      ? clearSky(
          sun.zenith,
          airMass(sun.zenith) * (number('pressure_Pa') / 101_325),
          number('linke_or_kt'),
          number('elev_m'),
          outside,
        )
      : split(number('ghi_W_m2'), number('linke_or_kt'), sun.zenith);
  return [
    say('global', number('ghi_W_m2'), sky.global),
    say('direct normal', light.beamNormal, sky.beamNormal),
    say('diffuse', light.diffuse, sky.diffuse),
    ...(text('poa_beam_W_m2') === ''
      ? []
      : [
          say(
            'direct on the plane',
            number('poa_beam_W_m2'),
            light.beamNormal * Math.max(0, incidenceCosine(plane, sun)),
          ),
          say(
            'sky on the plane',
            number('poa_sky_perez1990_W_m2'),
            skyOnPlane(plane, sun, light, number('airmass_rel_ky89'), outside),
          ),
          say(
            'ground on the plane',
            number('poa_ground_W_m2'),
            groundOnPlane(plane.tilt, number('ghi_W_m2'), number('albedo')),
          ),
        ]),
  ];
}

function split(global: number, clearness: number, zenith: number) {
  const diffuse = global * diffuseShare(clearness);
  return { global, diffuse, beamNormal: (global - diffuse) / Math.cos(zenith * rad) };
}

/** 2003-10-17 12:30:30, UTC-7, 39.742476 N 105.1786 W, 820 mbar, 11 °C. */
function workedExample(): Row[] {
  const sun = sunPosition({
    time: Date.UTC(2003, 9, 17, 19, 30, 30) / 1000,
    latitude: 39.742476,
    longitude: -105.1786,
  });
  const say = (field: string, expected: number, ours: number, tolerance = 0.01) =>
    row(
      {
        source: id,
        case: 'Reda and Andreas, worked example',
        field,
        unit: '°',
        expected,
        tolerance,
        known: 'looked up',
      },
      ours,
    );
  return [
    say('zenith', 50.11162, sun.zenith - refraction(sun.zenith, 82_000, 11)),
    say('azimuth', 194.34024, sun.azimuth),
    say('declination', -9.31434, sun.declination),
    say('distance, AU', 0.9965422974, sun.distance, 1e-4),
  ];
}

export const source: ValidationSource = {
  id,
  title: 'Sun and sky',
  measure: () => [
    ...workedExample(),
    ...measureTable(readFileSync(new URL('./solar_reference.csv', import.meta.url), 'utf8')),
  ],
  measureCase: (file) => measureTable(String(file)),
};
