import { describe, expect, it } from 'vitest';
import { ductHeat } from '../../air/ductHeat.ts';
import type { AirModel, DuctSection } from '../../air/ductwork.ts';
import { solveFlows } from '../../air/flows.ts';
import { airDensity } from '../../physics/air/index.ts';
import {
  type Building,
  compileBuilding,
  heatHeld,
  intake,
  type Slab,
  startState,
  stepBuilding,
  weatherSteps,
} from '../../physics/building/index.ts';
import { heatOfAir } from '../../physics/flow/index.ts';
import { ductLevel } from './ductLevel.ts';
import type { Places } from './places.ts';

const section = (id: string, side: DuctSection['side'], more: Partial<DuctSection> = {}): DuctSection => ({
  id,
  name: id,
  side,
  kind: 'flexible',
  diameter: 0.2,
  area: 0.0314,
  length: 6,
  surface: 3.8,
  roughness: 0.0009,
  frictionFactor: 1.5,
  lossCoefficient: 1,
  insulation: 1.06,
  leakage: 0.05,
  place: 'attic',
  supports: 1.2,
  ...more,
});
const terminal = (id: string, of: string, room: string) => ({
  id,
  name: id,
  section: of,
  room,
  faceArea: 0.05,
  freeArea: 0.035,
  resistance: 300,
});
/** Made up for the test. */
const model: AirModel = {
  sections: [
    section('plenum', 'supply', { diameter: 0.35, area: 0.1, surface: 1.5, length: 1 }),
    section('east', 'supply', { from: 'plenum' }),
    section('west', 'supply', { from: 'plenum', length: 9, surface: 5.7, place: 'below' }),
    section('back', 'return', { diameter: 0.35, area: 0.1, surface: 3, leakage: 0.02 }),
  ],
  terminals: [terminal('e', 'east', 'bed'), terminal('w', 'west', 'hall'), terminal('r', 'back', 'hall')],
  filter: { pressure: 25, velocity: 1.5, exponent: 1.4, area: 0.25 },
  added: 10,
  blower: {
    setting: 'high',
    points: [
      { flow: 0.1, pressure: 200 },
      { flow: 0.3, pressure: 120 },
      { flow: 0.45, pressure: 0 },
    ],
  },
  pressure: 101_325,
};
const places: Places = { rooms: ['hall', 'bed'], attic: 'attic', below: 'below', inside: 'hall' };
const leaks = { hall: 0.6, bed: 0.4 };
const flows = solveFlows(model, { supplyTemperature: 20, returnTemperature: 20 });
const density = airDensity(20, model.pressure);
const level = ductLevel({ unit: ['hall', 'bed'] }, model, flows, places, leaks, {
  output: 5000,
  share: 1,
  density,
  bypass: 0.2,
});

/** W that the level gives to each zone at these temperatures. */
function heatAt(unit: number, t: Readonly<Record<string, number>>): Record<string, number> {
  const into: Record<string, number> = {};
  const add = (id: string, watts: number): void => {
    into[id] = (into[id] ?? 0) + watts;
  };
  for (const [id, share] of Object.entries(level.carried.unit ?? {})) add(id, share * unit);
  for (const a of level.air) add(a.into, a.flow * heatOfAir * ((t[a.from] ?? 0) - (t[a.into] ?? 0)));
  for (const w of level.walls) add(w.into, w.conductance * ((t[w.from] ?? 0) - (t[w.into] ?? 0)));
  return into;
}

describe('ducts as the heat balance sees them', () => {
  it('give rooms and attic what the run-by-run calculation gives them', () => {
    const t = { hall: 20, bed: 20, attic: -5, below: 8 };
    const unit = 6000;
    // The leaving temperature that goes with it, found by the other calculation itself.
    let leaving = 40;
    const follow = () =>
      ductHeat(model, flows, { leaving, indoor: 20, attic: t.attic, below: t.below, returnTemperature: 20 });
    for (let i = 0; i < 50; i++) leaving = follow().entering + unit / (flows.flow * density * heatOfAir);
    const there = follow();
    const here = heatAt(unit, t);
    expect((here.hall ?? 0) + (here.bed ?? 0)).toBeCloseTo(there.delivered, 4);
    expect(here.bed).toBeCloseTo(there.registers.e?.heat ?? 0, 4);
    expect(here.attic).toBeCloseTo(there.heatToAttic, 4);
  });

  it('move nothing where all is alike and the unit rests', () => {
    for (const watts of Object.values(heatAt(0, { hall: 18, bed: 18, attic: 18, below: 18 })))
      expect(watts).toBeCloseTo(0, 9);
  });

  it('draw outdoor air for what leaks out more than leaks in', () => {
    const drawn = Object.values(level.drawn).reduce((a, x) => a + x, 0);
    expect(flows.supplyLeak).toBeGreaterThan(flows.returnLeak);
    expect(drawn).toBeCloseTo((flows.supplyLeak - flows.returnLeak) * density, 9);
    expect((level.drawn.bed ?? 0) / drawn).toBeCloseTo(0.4, 9);
  });

  it('lose more of the heat where the fan runs slowly', () => {
    const slow = ductLevel({ unit: ['hall', 'bed'] }, model, flows, places, leaks, {
      output: 2000,
      share: 0.4,
      density,
      bypass: 0.2,
    });
    expect(slow.carried.unit?.attic).toBeGreaterThan(level.carried.unit?.attic ?? 1);
  });

  it('close the balance of every step while they heat and cool', () => {
    const face = (zone: string) => ({ side: 'zone' as const, zone, convective: 3, emittance: 0.9 });
    const outside = {
      side: 'outdoors' as const,
      tilt: 90,
      azimuth: 180,
      absorptance: 0.6,
      emittance: 0.9,
      convective: 20,
    };
    const wall = [{ thickness: 0.1, conductivity: 0.1, density: 600, heat: 1000 }];
    const slabs = ['hall', 'bed', 'attic', 'below'].map(
      (id): Slab => ({ id: `wall ${id}`, area: 30, layers: wall, inside: face(id), other: outside }),
    );
    const at = (t: number) => Array.from({ length: 24 }, () => [t, t] as const);
    const building: Building = {
      pressure: 101_325,
      zones: ['hall', 'bed', 'attic', 'below'].map((id) => ({ id, volume: 60 })),
      slabs,
      windows: [],
      leakage: [{ kind: 'constant', zone: 'hall', flow: 0.01 }],
      passages: [],
      gains: [],
      systems: [
        {
          id: 'unit',
          sensor: 'hall',
          shares: {},
          heatTo: at(19),
          coolTo: at(22),
          heatMost: Float64Array.from({ length: 24 }, (_, i) => 2000 + 100 * i),
          coolMost: 3000,
        },
      ],
      ductworks: [
        {
          systems: ['unit'],
          levels: [
            { ...level, output: 500 },
            { ...level, output: 2500 },
          ],
          coilRatio: 0.006,
        },
      ],
      fans: [],
      windFactor: 0.5,
      groundReflectance: 0.2,
      series: [],
    };
    const hours = (f: (i: number) => number) => Float64Array.from({ length: 24 }, (_, i) => f(i));
    const weather = weatherSteps(
      {
        rowSeconds: 3600,
        firstDay: 180,
        latitude: 45,
        longitude: 0,
        timeZone: 0,
        pressure: 101_325,
        sunOffset: 1800,
        airOffset: 1800,
        dryBulb: hours((i) => 15 - 20 * Math.cos((i * Math.PI) / 12)),
        humidityRatio: hours(() => 0.009),
        windSpeed: hours(() => 3),
        sky: hours(() => 0),
        dni: hours(() => 0),
        dhi: hours(() => 0),
        horizon: [],
      },
      900,
    );
    const l = compileBuilding(building, weather);
    const s = startState(l, { inside: 20, outside: 10, humidity: 0.009 });
    const ways = new Float64Array(5);
    const seen = { heated: 0, cooled: 0, dried: 0 };
    for (let i = 0; i < 96 * 5; i++) {
      const step = i % 96;
      const before = heatHeld(l, s);
      stepBuilding(l, s, weather, step);
      intake(l, s, weather, step, ways);
      const heat = s.heat[0] ?? 0;
      if (heat > 0) seen.heated++;
      if (heat < 0) seen.cooled++;
      if ((s.dried[0] ?? 0) > 0) seen.dried++;
      const flows = ways.reduce((a, x) => a + Math.abs(x), 0);
      const unclosed = (heatHeld(l, s) - before) / 900 - ways.reduce((a, x) => a + x, 0);
      expect(Math.abs(unclosed)).toBeLessThan(1e-9 * flows);
      for (const w of s.humidity) expect(w).toBeGreaterThanOrEqual(0.006 - 1e-12);
    }
    expect(Math.min(...Object.values(seen))).toBeGreaterThan(0);
  });
});
