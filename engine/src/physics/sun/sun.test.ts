import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  extraterrestrialNormal,
  extraterrestrialSpencer,
  groundTemperature,
  isotropicSky,
  lightOnPlane,
  meanDayShape,
  skyHayDavies,
  skyOnPlane,
  splitGlobal,
  sunDay,
  sunPosition,
} from './index.ts';

const seed = { seed: 19_500_101, numRuns: 300 };
const moment = fc.integer({ min: -631_152_000, max: 2_556_143_999 });
const latitude = fc.double({ min: -65, max: 65, noNaN: true });
const longitude = fc.double({ min: -180, max: 180, noNaN: true });

describe('the sun (invariants of geometry)', () => {
  it('stands highest at transit, due south or north, and at the horizon when it rises and sets', () => {
    fc.assert(
      fc.property(moment, latitude, longitude, (time, lat, lon) => {
        const day = sunDay({ noon: time, latitude: lat, longitude: lon });
        const at = (t: number | undefined) => sunPosition({ time: t ?? Number.NaN, latitude: lat, longitude: lon });
        expect(Math.abs(day.transit - time)).toBeLessThan(43_500);
        expect(Math.abs(at(day.transit).hourAngle)).toBeLessThan(0.001);
        // Parallax lowers the centre by 0.0024 degrees; the rest is the search's tolerance.
        expect(at(day.rise).zenith).toBeCloseTo(90.8333, 2);
        expect(at(day.set).zenith).toBeCloseTo(90.8333, 2);
        expect(at(day.rise).azimuth).toBeLessThan(180);
        expect(at(day.set).azimuth).toBeGreaterThan(180);
      }),
      seed,
    );
  });

  it('stays up in June and down in December at 80 degrees north, the other way in the south', () => {
    const [june, december] = [Date.UTC(2020, 5, 21, 12) / 1000, Date.UTC(2020, 11, 21, 12) / 1000];
    const always = (noon: number, lat: number) => sunDay({ noon, latitude: lat, longitude: 0 }).always;
    expect([always(june, 80), always(december, 80)]).toEqual(['up', 'down']);
    expect([always(june, -80), always(december, -80)]).toEqual(['down', 'up']);
  });

  it('gives no number for no number', () => {
    expect(sunPosition({ time: Number.NaN, latitude: 40, longitude: 0 }).zenith).toBeNaN();
    expect(sunDay({ noon: 0, latitude: Number.NaN, longitude: 0 })).toEqual({ transit: Number.NaN });
  });

  it('shines outside the air as strongly by either series within 0.6 %', () => {
    for (let n = 1; n <= 365; n++)
      expect(extraterrestrialSpencer(n, 1361) / extraterrestrialNormal(n, 1361)).toBeCloseTo(1, 2);
  });
});

const light = fc.record({
  beamNormal: fc.double({ min: 0, max: 1000, noNaN: true }),
  diffuse: fc.double({ min: 1, max: 500, noNaN: true }),
});
const up = fc.record({
  zenith: fc.double({ min: 0, max: 86, noNaN: true }),
  azimuth: fc.double({ min: 0, max: 360, noNaN: true }),
});

describe('light on planes (invariants)', () => {
  it('every sky model gives a plane lying flat exactly the diffuse light of the level', () => {
    fc.assert(
      fc.property(light, up, ({ beamNormal, diffuse }, sun) => {
        const flat = { tilt: 0, azimuth: 180 };
        // Perez clamps the sun at 85 degrees; below that the circumsolar part is a little short.
        const sky = skyOnPlane(flat, { ...sun, zenith: Math.min(84, sun.zenith) }, { beamNormal, diffuse }, 2, 1361);
        expect(sky).toBeCloseTo(diffuse, 9);
        expect(skyHayDavies(flat, sun, { beamNormal, diffuse }, 1361)).toBeCloseTo(diffuse, 9);
        expect(isotropicSky(0, diffuse)).toBe(diffuse);
      }),
      seed,
    );
  });

  it('a plane lying flat sees global light in all, one facing down sees what the ground throws up', () => {
    fc.assert(
      fc.property(light, up, ({ beamNormal, diffuse }, sun) => {
        const z = Math.min(84, sun.zenith);
        const global = diffuse + beamNormal * Math.cos((z * Math.PI) / 180);
        const air = { mass: 2, extraterrestrial: 1361, reflectance: 0.2 };
        const here = (tilt: number) =>
          lightOnPlane({ tilt, azimuth: 180 }, { ...sun, zenith: z }, { beamNormal, diffuse, global }, air);
        expect(here(0).total).toBeCloseTo(global, 8);
        expect(here(180).beam).toBe(0);
        expect(here(180).ground).toBeCloseTo(0.2 * global, 8);
      }),
      seed,
    );
  });

  it('a split sums to the global light it was made of, with no beam beyond the extraterrestrial', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1500, noNaN: true }),
        fc.double({ min: 0, max: 120, noNaN: true }),
        (g, z) => {
          const s = splitGlobal(g, z, 1361);
          expect(s.diffuse + s.beamNormal * Math.cos((z * Math.PI) / 180)).toBeCloseTo(g, 9);
          expect(s.beamNormal).toBeLessThanOrEqual(1361);
          expect(s.diffuse).toBeGreaterThanOrEqual(0);
        },
      ),
      seed,
    );
    expect(splitGlobal(Number.NaN, 30, 1361)).toEqual({ global: 0, beamNormal: 0, diffuse: 0 });
  });
});

describe('shapes of day and ground (invariants)', () => {
  it('the mean day sums to nothing and spans about its range', () => {
    const hours = Array.from({ length: 24 }, (_, h) => meanDayShape(h));
    expect(hours.reduce((a, b) => a + b)).toBeCloseTo(0, 9);
    expect(Math.max(...hours) - Math.min(...hours)).toBeCloseTo(1, 1);
  });

  it('the ground keeps its mean over a year at any depth, and far down always', () => {
    const soil = { mean: 9, amplitude: 12, coldestDay: 30, diffusivity: 0.05 };
    for (const depth of [0, 1, 4]) {
      const year = Array.from({ length: 365 }, (_, day) => groundTemperature(soil, depth, day));
      expect(year.reduce((a, b) => a + b) / 365).toBeCloseTo(9, 9);
    }
    expect(groundTemperature(soil, 60, 100)).toBeCloseTo(9, 6);
  });
});
