// Source: pvlib at commit 6382338a, tests/test_irradiance.py (looked up). See README.md.
import { incidenceCosine, isotropicSky, lightOnPlane, skyHayDavies, skyOnPlane } from '@kneewall/engine/physics';
import { type Row, row } from '../src/row.ts';

const plane = { tilt: 40, azimuth: 180 };
const outside = 1321.16558348;

/** 32.2 N 111 W, 24 June 2014, 06:00, 12:00 and 18:00, with what falls on a plane of 40 degrees facing south. */
const hours = [
  {
    name: '06:00',
    sun: { zenith: 82.85457044, azimuth: 66.71410338 },
    light: { global: 79.73860422, beamNormal: 316.1949056, diffuse: 40.46149818 },
    mass: 7.58831596,
    expected: [35.728402, 27.1775, 31.46046871, 3.731058, 0, 35.194566],
  },
  {
    name: '12:00',
    sun: { zenith: 10.56413562, azimuth: 144.76567754 },
    light: { global: 1042.48031487, beamNormal: 939.95469881, diffuse: 118.45831879 },
    mass: 1.01688136,
    expected: [104.601328, 102.9949, 109.084332, 48.778813, 798.319393, 956.182537],
  },
  {
    name: '18:00',
    sun: { zenith: 72.41687122, azimuth: 287.04104128 },
    light: { global: 257.20751138, beamNormal: 646.22886049, diffuse: 62.03376265 },
    mass: 3.27930443,
    expected: [54.777191, 33.1909, 45.45539877, 12.035025, 33.501434, 90.996249],
  },
] as const;

const say = (name: string, field: string, unit: string, expected: number, ours: number, tolerance: number): Row =>
  row({ source: 'solar', case: name, field, unit, expected, tolerance, known: 'looked up' }, ours);

function tilted(): Row[] {
  return hours.flatMap(({ name, sun, light, mass, expected }) => {
    const on = lightOnPlane(plane, sun, light, { mass, extraterrestrial: outside, reflectance: 0.4 });
    const ours = [
      ['sky, isotropic', isotropicSky(plane.tilt, light.diffuse), 1e-4],
      ['sky, Hay and Davies', skyHayDavies(plane, sun, light, outside), 1e-3],
      ['sky, Perez 1990', on.sky, 0.01],
      ['ground', on.ground, 1e-4],
      ['direct', on.beam, 1e-4],
      ['total', on.total, 0.02],
    ] as const;
    return ours.map(([field, value, tolerance], i) =>
      say(`plane of 40 degrees, ${name}`, field, 'W/m²', expected[i] ?? Number.NaN, value, tolerance),
    );
  });
}

/** Direct, diffuse, zenith, azimuth, air mass, sky on the plane: hours whose horizon is darker than the sky. */
const darkHorizon: readonly (readonly [number, number, number, number, number, number])[] = [
  [158, 249, 57.746951, 171.003315, 1.869315, 281.410185],
  [19, 165, 57.564205, 187.346924, 1.859981, 152.20879],
  [1, 136, 60.813841, 202.974357, 2.044429, 123.867898],
  [0, 93, 66.989435, 216.725599, 2.544943, 82.836412],
  [0, 50, 75.353368, 228.317233, 3.900136, 43.517015],
];

/** Tilt and azimuth of the plane, zenith and azimuth of the sun, angle between. */
const incidences: readonly (readonly [number, number, number, number, number])[] = [
  [30, 180, 30, 180, 0],
  [90, 0, 30, 60, 75.5224878],
  [90, 0, 30, 170, 119.4987042],
  [30, 180, 150, 0, 180],
];

export const planes = (): Row[] => [
  ...tilted(),
  ...darkHorizon.map(([beamNormal, diffuse, zenith, azimuth, mass, expected]) =>
    say(
      'Perez, dark horizon',
      `direct ${beamNormal}, diffuse ${diffuse}`,
      'W/m²',
      expected,
      skyOnPlane({ tilt: 34, azimuth: 180 }, { zenith, azimuth }, { beamNormal, diffuse }, mass, 1414),
      0.01,
    ),
  ),
  ...incidences.map(([tilt, facing, zenith, azimuth, expected]) => {
    const cosine = incidenceCosine({ tilt, azimuth: facing }, { zenith, azimuth });
    const ours = (Math.acos(Math.max(-1, Math.min(1, cosine))) * 180) / Math.PI;
    return say('incidence', `${tilt} ${facing} ${zenith} ${azimuth}`, '°', expected, ours, 1e-5);
  }),
];
