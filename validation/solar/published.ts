// Sources: NREL/TP-560-34302, pvlib at commit 6382338a, Duffie & Beckman (from memory). See README.md.
import {
  airMass,
  clearSky,
  declinationOf,
  extraterrestrialDay,
  extraterrestrialSpencer,
  incidenceCosine,
  refraction,
  type SunDay,
  simplePosition,
  splitGlobal,
  sunDay,
  sunPosition,
  sunsetAngle,
} from '@kneewall/engine/physics';
import { type How, type Row, row } from '../src/row.ts';

const id = 'solar';
const rad = Math.PI / 180;

/** Says one row of a case: expected, ours, tolerance. */
const sayer =
  (known: How, name: string, unit: string) =>
  (field: string, expected: number, ours: number, tolerance: number): Row =>
    row({ source: id, case: name, field, unit, expected, tolerance, known }, ours);

/** 2003-10-17 12:30:30, UTC-7, 39.742476 N 105.1786 W, 820 mbar, 11 °C. */
export function workedExample(): Row[] {
  const name = 'Reda and Andreas, worked example';
  const place = { latitude: 39.742476, longitude: -105.1786 };
  const at = (day: number) => {
    const sun = sunPosition({ time: Date.UTC(2003, 9, day, 19, 30, 30) / 1000, ...place });
    return { ...sun, apparent: sun.zenith - refraction(sun.zenith, 82_000, 11) };
  };
  const [sun, next] = [at(17), at(18)];
  const incidence = incidenceCosine({ tilt: 30, azimuth: 170 }, { zenith: sun.apparent, azimuth: sun.azimuth });
  const say = sayer('looked up', name, '°');
  const remembered = sayer('from memory', name, '°');
  const seconds = sayer('from memory', name, 's after midnight');
  const day = ofUtcDay(Date.UTC(2003, 9, 17) / 1000, -7, place);
  return [
    say('zenith', 50.11162, sun.apparent, 0.01),
    say('azimuth', 194.34024, sun.azimuth, 0.01),
    say('declination', -9.31434, sun.declination, 0.01),
    say('hour angle', 11.1059, sun.hourAngle, 0.01),
    sayer('looked up', name, 'AU')('distance', 0.9965422974, sun.distance, 5e-5),
    say('zenith at 900 mbar', 50.11003, sun.zenith - refraction(sun.zenith, 90_000, 11), 0.01),
    say('zenith the next day', 50.47826, next.apparent, 0.01),
    say('azimuth the next day', 194.311132, next.azimuth, 0.01),
    remembered('incidence on a slope of 30', 25.187, Math.acos(incidence) / rad, 0.01),
    sayer('from memory', name, 'min')('equation of time', 14.641503, sun.equationOfTime, 0.04),
    seconds('rise', clock('06:12:43'), day.rise, 2),
    seconds('transit', clock('11:46:04'), day.transit, 2),
    seconds('set', clock('17:20:19'), day.set, 2),
  ];
}

const clock = (text: string): number => text.split(':').reduce((sum, part) => sum * 60 + Number(part), 0);

/**
 * The three events of one day in Greenwich, as local clock times in s. The published values are told so: west of
 * Greenwich a sunset after 24:00 there is the evening's before (compared with astronomy-engine: it agrees).
 */
function ofUtcDay(midnight: number, zone: number, place: { latitude: number; longitude: number }) {
  const around = [-1, 0, 1].map((d) => sunDay({ ...place, noon: midnight + (0.5 - zone / 24 + d) * 86_400 }));
  const within = (of: (day: SunDay) => number | undefined): number => {
    const time = around.map((d) => of(d) ?? Number.NaN).find((t) => t >= midnight && t < midnight + 86_400);
    return ((time ?? Number.NaN) + zone * 3600) % 86_400;
  };
  return { rise: within((d) => d.rise), transit: within((d) => d.transit), set: within((d) => d.set) };
}

/** Year, month, day, zone, latitude, longitude, rise, transit, set as local clock times. */
const days: readonly (readonly [number, number, number, number, number, number, string, string, string])[] = [
  [2015, 1, 2, -7, 39.742476, -105.1786, '07:21:55', '12:04:45', '16:47:43'],
  [2015, 8, 2, -7, 39.742476, -105.1786, '05:00:27', '12:06:58', '19:13:58'],
  [1996, 7, 5, 0, -35, 0, '07:08:15', '12:04:36', '17:01:04'],
  [2004, 12, 4, 0, -35, 0, '04:38:57', '11:50:22', '19:02:03'],
  [2000, 1, 1, -5, 40, -80, '07:41:51', '12:23:23', '17:05:04'],
];

/** pvlib, tests/test_solarposition.py. */
export function risings(): Row[] {
  const distances = sayer('looked up', 'distance of the sun', 'AU');
  const distance = (month: number) =>
    sunPosition({ time: Date.UTC(2015, month - 1, 2, 7) / 1000, latitude: 0, longitude: 0 }).distance;
  return [
    distances('2015-01-02', 0.983289204601, distance(1), 5e-5),
    distances('2015-08-02', 1.01486146446, distance(8), 5e-5),
    ...days.flatMap(([year, month, date, zone, latitude, longitude, rise, transit, set]) => {
      const sun = ofUtcDay(Date.UTC(year, month - 1, date) / 1000, zone, { latitude, longitude });
      const say = sayer('looked up', `${year}-${month}-${date} at ${latitude} ${longitude}`, 's after midnight');
      return [
        say('rise', clock(rise), sun.rise, 2),
        say('transit', clock(transit), sun.transit, 2),
        say('set', clock(set), sun.set, 2),
      ];
    }),
  ];
}

/** Duffie & Beckman's examples; azimuth there is from south, west positive. */
export function textbook(): Row[] {
  const printed = sayer('from memory', 'Duffie and Beckman, examples', '°');
  const worked = sayer('computed', 'Duffie and Beckman, examples', '°');
  const february = simplePosition(43, -14, 9.5);
  const july = simplePosition(43, 23.1, 18.5);
  const thirteenth = simplePosition(43, declinationOf(44), 10.5);
  const incidence = Math.acos(incidenceCosine({ tilt: 45, azimuth: 195 }, thirteenth)) / rad;
  return [
    printed('1.6.1 incidence', 35, incidence, 0.5),
    printed('1.6.2 zenith, 13 February', 66.5, february.zenith, 0.1),
    printed('1.6.2 azimuth, 13 February', -40, february.azimuth - 180, 0.1),
    printed('1.6.2 zenith, 1 July', 79.6, july.zenith, 0.1),
    printed('1.6.2 azimuth, 1 July', 112, july.azimuth - 180, 0.1),
    worked('1.10.1 sunset angle', 98.895, sunsetAngle(43, declinationOf(105)), 0.001),
    sayer('from memory', 'Duffie and Beckman, examples', 'MJ/m²')(
      '1.10.1 outside the air, 15 April',
      33.8,
      extraterrestrialDay(43, 105, 1367) * 3.6,
      0.1,
    ),
    ...dayLengths(),
  ];
}

/** Latitude; hours of day on days 17, 80, 172, 264, 355; MJ/m² outside the air on days 17, 172, 355 at 1367 W/m². */
const lengths: readonly (readonly number[])[] = [
  [0, 12, 12, 12, 12, 12, 36.227, 33.371, 35.612],
  [30, 10.3003, 11.9689, 13.9338, 11.9845, 10.0662, 21.266, 41.18, 19.681],
  [40, 9.5059, 11.9548, 14.8459, 11.9774, 9.1541, 15.211, 41.892, 13.511],
  [43, 9.216, 11.9498, 15.1813, 11.9749, 8.8187, 13.363, 41.938, 11.658],
  [55.317, 7.5298, 11.9222, 17.1757, 11.9611, 6.8243, 5.963, 41.557, 4.442],
  [60, 6.4731, 11.9068, 18.4939, 11.9534, 5.5061, 3.416, 41.359, 2.109],
];

function dayLengths(): Row[] {
  return lengths.flatMap(([latitude = 0, ...expected]) => {
    const hours = sayer('computed', `day length at ${latitude}`, 'h');
    const energy = sayer('computed', `outside the air at ${latitude}`, 'MJ/m²');
    const at = (i: number) => expected[i] ?? Number.NaN;
    return [
      ...[17, 80, 172, 264, 355].map((n, i) =>
        hours(`day ${n}`, at(i), (2 / 15) * sunsetAngle(latitude, declinationOf(n)), 0.0001),
      ),
      ...[17, 172, 355].map((n, i) =>
        energy(`day ${n}`, at(i + 5), extraterrestrialDay(latitude, n, 1367) * 3.6, 0.001),
      ),
    ];
  });
}

/** pvlib, tests/test_atmosphere.py and tests/test_irradiance.py. */
export function airAndSplit(): Row[] {
  const mass = sayer('looked up', 'air mass, Kasten and Young', '');
  const outside = (day: number) => extraterrestrialSpencer(day, 1366.1);
  const distance = sunPosition({ time: Date.UTC(2012, 9, 26) / 1000, latitude: 0, longitude: 0 }).distance;
  const etr = sayer('looked up', 'outside the air, 26 October', 'W/m²');
  const splits: readonly (readonly [string, number, number, number, number, number])[] = [
    ['1 January, sun low', 1, 50, 85, 41.5703604, 96.7192672],
    ['1 January', 1, 1000, 10, 217.860117, 794.205651],
    ['20 June', 171, 1000, 10, 170.790318, 842.001578],
  ];
  return [
    ...(
      [
        [89.9, 36.467],
        [80, 5.586],
        [0, 1],
      ] as const
    ).map(([z, m]) => mass(`zenith ${z}`, m, airMass(z), 1e-3)),
    etr('Spencer', 1383.636, outside(300), 10),
    etr('true distance', 1382.4927, 1366.1 / distance ** 2, 0.1),
    ...splits.flatMap(([when, day, global, zenith, diffuse, beam]) => {
      const say = sayer('looked up', `Erbs, ${when}`, 'W/m²');
      const ours = splitGlobal(global, zenith, outside(day));
      return [
        say('diffuse', diffuse, ours.diffuse, 1e-4 * diffuse),
        say('direct normal', beam, ours.beamNormal, 1e-4 * beam),
      ];
    }),
  ];
}

/** Zenith, air mass, turbidity, outside W/m², height m; global, direct, diffuse. pvlib, tests/test_clearsky.py. */
const clear: readonly (readonly [number, number, number, number, number, number, number, number])[] = [
  [10, 1, 3, 1364, 0, 1038.159219, 942.208186, 110.265293],
  [10, 1, 3, 1370, 0, 1042.725902, 946.352797, 110.750331],
  [10, 1, 3, 1364, 2000, 1134.243124, 994.953778, 154.404929],
  [82.85457, 6.97935524, 3, 1364, 0, 65.494266, 321.160922, 25.54562],
  [46.04676, 1.32355476, 3, 1364, 0, 704.696813, 888.90147, 87.736013],
  [10.56414, 0.93527685, 3, 1364, 0, 1044.123068, 953.249259, 107.031097],
  [34.86074, 1.12008114, 3, 1364, 0, 853.020657, 922.061247, 96.429095],
  [72.41687, 3.01614096, 3, 1364, 0, 251.994277, 655.449252, 53.990135],
  [0, 1, 2, 1364, 0, 1095.7707, 1014.3881, 81.3827],
  [0, 1, 3, 1364, 0, 1054.1745, 942.2082, 111.9663],
  [0, 1, 4, 1364, 0, 1014.1573, 861.1134, 153.0438],
];

export const clearSkies = (): Row[] =>
  clear.flatMap(([zenith, mass, turbidity, outside, height, global, beam, diffuse]) => {
    const ours = clearSky(zenith, mass, turbidity, height, outside);
    const say = sayer(
      'looked up',
      `clear sky, zenith ${zenith}, turbidity ${turbidity}, ${height} m, ${outside}`,
      'W/m²',
    );
    return [
      say('global', global, ours.global, 1e-4 * global),
      say('direct normal', beam, ours.beamNormal, 1e-4 * beam),
      say('diffuse', diffuse, ours.diffuse, 1e-4 * diffuse),
    ];
  });
