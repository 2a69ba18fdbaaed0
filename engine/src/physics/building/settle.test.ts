import { describe, expect, it } from 'vitest';
import { type Building, compileBuilding, settleDay, startState, stepBuilding, weatherSteps } from './index.ts';

const hours = (f: (h: number) => number): Float64Array => Float64Array.from({ length: 24 }, (_, h) => f(h));
const weather = weatherSteps(
  {
    rowSeconds: 3600,
    firstDay: 10,
    latitude: 45,
    longitude: 0,
    timeZone: 0,
    pressure: 101_325,
    sunOffset: 1800,
    airOffset: 1800,
    dryBulb: hours((h) => -5 + 6 * Math.sin(((h - 9) * Math.PI) / 12)),
    humidityRatio: hours(() => 0.003),
    windSpeed: hours(() => 3),
    sky: hours(() => -15),
    dni: hours(() => 0),
    dhi: hours(() => 0),
    horizon: [],
  },
  3600,
);
const soil = { thickness: 1.2, conductivity: 1.5, density: 1800, heat: 1000 };
const face = (zone: string) => ({ side: 'zone' as const, zone, convective: 3, emittance: 0.9 });
const open = { side: 'outdoors' as const, tilt: 90, azimuth: 0, absorptance: 0, emittance: 0.9, convective: 20 };
/** A room over a cellar in deep soil, which takes months to forget. */
const building: Building = {
  pressure: 101_325,
  zones: [
    { id: 'room', volume: 60 },
    { id: 'cellar', volume: 60 },
  ],
  slabs: [
    { id: 'wall', area: 50, layers: [{ ...soil, thickness: 0.3 }], inside: face('room'), other: open },
    { id: 'floor', area: 25, layers: [{ ...soil, thickness: 0.15 }], inside: face('room'), other: face('cellar') },
    { id: 'soil', area: 60, layers: [soil], inside: face('cellar'), other: { side: 'given', series: 0 } },
  ],
  windows: [],
  leakage: [{ kind: 'constant', zone: 'room', flow: 0.01 }],
  passages: [],
  gains: [],
  systems: [
    {
      id: 'heat',
      sensor: 'room',
      shares: { room: 1 },
      heatTo: Array.from({ length: 24 }, () => [20, 20] as const),
      coolTo: Array.from({ length: 24 }, () => null),
    },
  ],
  fans: [],
  windFactor: 0.5,
  groundReflectance: 0.2,
  series: [hours(() => 8)],
};

describe('a day that repeats itself', () => {
  it('is where waiting for a year would have come to, in a tenth of the days', () => {
    const l = compileBuilding(building, weather);
    const begin = () => startState(l, { inside: 20, zones: { cellar: 0 }, outside: -5, humidity: 0.003 });
    const waited = begin();
    for (let i = 0; i < 400 * 24; i++) stepBuilding(l, waited, weather, i);
    const leapt = begin();
    settleDay(l, leapt, weather, 20);
    const slow = begin();
    for (let i = 0; i < 20 * 24; i++) stepBuilding(l, slow, weather, i);
    const off = (s: typeof waited): number => Math.max(...waited.t.map((t, v) => Math.abs((s.t[v] ?? 0) - t)));
    expect(off(leapt)).toBeLessThan(0.02);
    // Without the leaps it would still be far away.
    expect(off(slow)).toBeGreaterThan(10 * off(leapt));
    expect(leapt.heat[0] ?? 0).toBeCloseTo(waited.heat[0] ?? 0, 0);
  });

  it('stays where it is once it repeats itself', () => {
    const l = compileBuilding(building, weather);
    const s = startState(l, { inside: 20, outside: -5, humidity: 0.003 });
    for (let i = 0; i < 400 * 24; i++) stepBuilding(l, s, weather, i);
    const before = [...s.t, ...s.modes];
    settleDay(l, s, weather, 5);
    [...s.t, ...s.modes].forEach((x, i) => {
      expect(x).toBeCloseTo(before[i] ?? 0, 4);
    });
  });
});
