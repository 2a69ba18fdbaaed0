import { describe, expect, it } from 'vitest';
import { airDensity } from '../../physics/air/index.ts';
import {
  type Envelope,
  eaveWind,
  leakageFlow,
  meanPressureCoefficient,
  stackGradient,
  wallPressureCoefficient,
} from '../../physics/infiltration/index.ts';
import type { AirModel, DuctSection } from '../ductwork.ts';
import { nominalAir, solveFlows } from '../flows.ts';
import { type Flue, flueCases } from './flueCases.ts';
import type { HouseAir, LeakPlace, Weather } from './houseAir.ts';
import { shutSolver } from './shutDoors.ts';
import { calm, type WeatherCase } from './weathers.ts';

const section = (id: string, side: DuctSection['side'], leakage: number): DuctSection => ({
  id,
  name: id,
  side,
  kind: 'round',
  diameter: 0.25,
  area: 0.049,
  length: 5,
  surface: 4,
  roughness: 0.00009,
  frictionFactor: 1,
  lossCoefficient: 1,
  insulation: 1,
  leakage,
  place: 'attic',
  supports: 1.2,
});
const terminal = (id: string, of: string) => ({
  id,
  name: id,
  section: of,
  room: 'hall',
  faceArea: 0.05,
  freeArea: 0.035,
  resistance: 1500,
});
const model = (leakage = 0): AirModel => ({
  sections: [section('out', 'supply', leakage), section('back', 'return', 0)],
  terminals: [terminal('blows', 'out'), terminal('grille', 'back')],
  filter: { pressure: 20, velocity: 1.5, exponent: 1.4, area: 0.2 },
  added: 0,
  blower: {
    setting: 'high',
    points: [
      { flow: 0.05, pressure: 200 },
      { flow: 0.35, pressure: 20 },
    ],
  },
  pressure: 101_325,
});
const n = 0.65;
const whole = 0.03;
const houseOf = (places: readonly LeakPlace[], weather?: Weather, more: Partial<HouseAir> = {}): HouseAir => ({
  rooms: [],
  leaks: { open: whole, exponent: n, places },
  exhaust: {},
  top: 2.5,
  ...(weather ? { weather } : {}),
  ...more,
});
/** Pa of a house whose ducts are tight: they take as much as they give, so that weather and fans alone move it. */
const pressure = (house: HouseAir): number =>
  shutSolver()(model(), nominalAir, solveFlows(model(), nominalAir), house).house;
const cold = { rise: 2, wind: 0, from: 0 };

describe('the stack of a warm house', () => {
  it('has its neutral level half way between equal leaks below and above (closed form)', () => {
    const halves = [
      { height: 0, share: 0.5 },
      { height: 2.5, share: 0.5 },
    ];
    expect(pressure(houseOf(halves, cold))).toBeCloseTo(-cold.rise * 1.25, 9);
  });

  it('draws its neutral level towards the larger of two leaks (closed form)', () => {
    for (const [low, high, share] of [
      [0, 2.5, 0.8],
      [0.3, 4, 0.35],
      [1, 6, 0.1],
    ] as const) {
      const places = [
        { height: low, share },
        { height: high, share: 1 - share },
      ];
      // c₁ (z - z₁)ⁿ = c₂ (z₂ - z)ⁿ
      const neutral = low + (high - low) / (1 + (share / (1 - share)) ** (1 / n));
      expect(pressure(houseOf(places, cold))).toBeCloseTo(-cold.rise * neutral, 8);
    }
  });

  it('loses its outflow at the ceiling once a fan takes all that comes in below (closed form)', () => {
    const halves = [
      { height: 0, share: 0.5 },
      { height: 2.5, share: 0.5 },
    ];
    const fan = (whole / 2) * (cold.rise * 2.5) ** n;
    expect(pressure(houseOf(halves, cold, { exhaust: { '': fan } }))).toBeCloseTo(-cold.rise * 2.5, 3);
  });

  it('lets through what the published leakage model says of the same house', () => {
    // ASHRAE Fundamentals, enhanced model, no flue: coefficients from memory (0.054 and 0.078), which stand for an
    // exponent near 0.67 and for a second storey that adds less than its full height.
    const exponent = 0.67;
    const outdoor = -15;
    const rise = stackGradient(airDensity(outdoor, 101_325), airDensity(20, 101_325));
    for (const storeys of [1, 2] as const) {
      const height = 2.5 * storeys;
      const walls = Array.from({ length: 4 * storeys }, (_, i) => ({
        height: (height * (i + 0.5)) / (4 * storeys),
        share: 0.5 / (4 * storeys),
      }));
      const places = [...walls, { height: 0, share: 0.25 }, { height, share: 0.25 }];
      const leaks = { open: whole, exponent, places };
      const at = pressure(houseOf(places, { rise, wind: 0, from: 0 }, { leaks }));
      const through = (p: number): number => whole * Math.sign(p) * Math.abs(p) ** exponent;
      const flows = places.map((p) => p.share * through(at + rise * p.height));
      const ours = flows.reduce((a, q) => a + Math.max(0, q), 0);
      const envelope: Envelope = { coefficient: whole, exponent, storeys, crawlSpace: false, flue: false, shelter: 3 };
      expect(Math.abs(ours / leakageFlow(envelope, 20 - outdoor, 0) - 1)).toBeLessThan(storeys === 1 ? 0.12 : 0.25);
    }
  });
});

describe('wind', () => {
  it('presses on the walls of a low house as measured (Swami and Chandra 1987, a table read from a page)', () => {
    const table = [0.603, 0.469, 0.119, -0.443, -0.681, -0.39, -0.364];
    for (const [i, c] of table.entries()) expect(wallPressureCoefficient(30 * i)).toBeCloseTo(c, 2);
    expect(wallPressureCoefficient(-60)).toBe(wallPressureCoefficient(60));
    expect(wallPressureCoefficient(330)).toBeCloseTo(wallPressureCoefficient(30), 12);
    expect(meanPressureCoefficient(0)).toBeCloseTo((0.603 - 0.364 - 2 * 0.443) / 4, 2);
  });

  it('brings a house with leaks before and behind half way between them (closed form)', () => {
    const halves = [
      { height: 0, faces: 270, share: 0.5 },
      { height: 0, faces: 90, share: 0.5 },
    ];
    const at = pressure(houseOf(halves, { rise: 0, wind: 8, from: 270 }));
    expect(at).toBeCloseTo((8 * (wallPressureCoefficient(0) + wallPressureCoefficient(180))) / 2, 8);
  });

  it('reaches the eaves as the leakage model has it', () => {
    expect(eaveWind({ storeys: 1, shelter: 1 }, 10)).toBeCloseTo(4.8, 12);
    expect(eaveWind({ storeys: 2, shelter: 3 }, 10)).toBeCloseTo(0.7 * 5.9, 12);
  });

  it('of no strength over a house as warm as outdoors is a calm day', () => {
    const places = [
      { height: 0, share: 0.5 },
      { height: 2.5, faces: 0, share: 0.5 },
    ];
    const exhaust = { '': 0.05 };
    const still = pressure(houseOf(places, { rise: 0, wind: 0, from: 0 }, { exhaust }));
    expect(still).toBeCloseTo(pressure(houseOf(places, undefined, { exhaust })), 6);
    expect(still).toBeCloseTo(-((0.05 / whole) ** (1 / n)), 6);
  });
});

describe('what a flue meets', () => {
  const places = [
    { height: 0, share: 0.5 },
    { height: 2.5, share: 0.5 },
  ];
  const winter: WeatherCase = { id: 'cold', weather: cold };
  const solved = (house: HouseAir, flue: Flue, leakage = 0) =>
    flueCases(model(leakage), solveFlows(model(leakage), nominalAir), house, flue, [winter]);
  const of = (cases: ReturnType<typeof solved>, weather: string, blows: boolean) => {
    const found = cases.find((c) => c.weather === weather && c.blows === blows);
    if (!found) throw new Error('the case is there');
    return found;
  };
  const fans = houseOf(places, undefined, { exhaust: { '': 0.01 } });

  it('is what fans add, not what the cold did before: small fans add more in the cold (closed form)', () => {
    const cases = solved(fans, { height: 1, cold: false });
    expect(of(cases, 'calm', false).added).toBeCloseTo(-((0.01 / whole) ** (1 / n)), 6);
    expect(of(cases, 'cold', false).still).toBeCloseTo(cold.rise * (1 - 1.25), 6);
    // Leaks that already pass air give way as their slope: Q = n c pⁿ / p · Δp.
    const slope = n * whole * (cold.rise * 1.25) ** (n - 1);
    expect(of(cases, 'cold', false).added).toBeCloseTo(-0.01 / slope, 2);
    expect(cases[0]?.weather).toBe('cold');
  });

  it('holds the pull of the warm house against a flue that starts cold, and no other', () => {
    const [warm, icy] = [false, true].map((is) => of(solved(fans, { height: 1, cold: is }), 'cold', false));
    expect(warm?.meets).toBe(warm?.added);
    expect(icy?.meets).toBeCloseTo((icy?.added ?? 0) + cold.rise * (1 - 1.25), 6);
  });

  it('does not credit a flue that stands above the neutral level', () => {
    const high = of(solved(fans, { height: 2.4, cold: true }), 'cold', false);
    expect(high.still).toBeGreaterThan(0);
    expect(high.meets).toBe(high.added);
  });

  it('is worse in a shut room that has a fan of its own', () => {
    const rooms = [{ id: 'boiler', opening: 0.01, leak: 0.002, places }];
    const house = houseOf(places, undefined, { rooms, exhaust: { boiler: 0.03 } });
    const [there, open] = [
      of(solved(house, { room: 'boiler', height: 1, cold: false }), calm.id, false),
      of(solved(house, { height: 1, cold: false }), calm.id, false),
    ];
    expect(there.meets).toBeLessThan(open.meets - 1);
  });

  it('with no exhausts is that of the blower alone, and puts a case without an answer first', () => {
    const cases = solved(houseOf(places), { height: 1, cold: false }, 0.1);
    expect(cases.every((c) => c.blows && c.added < 0)).toBe(true);
    const sealed = solved({ rooms: [], leaks: { open: 0, exponent: n }, exhaust: {} }, { height: 1, cold: false }, 0.1);
    expect(sealed[0]?.converged).toBe(false);
  });
});
