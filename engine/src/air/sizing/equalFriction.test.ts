import { describe, expect, it } from 'vitest';
import { inch } from '../../physics/exact.ts';
import type { DuctSection } from '../ductwork.ts';
import { allowedOptions, type SectionNeed } from './candidates.ts';
import { priceBook } from './priceBook.ts';
import { solveSizing } from './solveSizing.ts';
import type { SizingSection } from './spec.ts';
import { type DuctKind, shapeId, stockOf } from './stock.ts';
import type { VelocityLimits } from './velocity.ts';

// Friction-chart points, computed: Colebrook, standard air 1.204 kg/m³ and 1.825e-5 Pa s, tolerance 0.2 %.
// Roughness 0.09 mm (metal) and 0.9 mm (flexible fully extended, board). Flow in cfm at 0.1, 0.08 and 0.05 inH2O per 100 ft.
const cfm = 0.00047194745;
const inH2O = 249.08891;
const metal = {
  0.1: {
    4: 37.1,
    5: 67.8,
    6: 110.7,
    7: 167.6,
    8: 239.8,
    9: 328.7,
    10: 435.6,
    12: 708.6,
    14: 1068.2,
    16: 1523.3,
    18: 2082.3,
  },
  0.08: { 4: 32.7, 6: 97.9, 8: 212.1, 10: 385.6, 12: 627.6, 14: 946.5 },
  0.05: { 6: 75.3, 8: 163.6, 10: 297.8, 12: 485.3, 14: 732.7, 16: 1046.1 },
} as const;
const flexible = {
  4: 31.5,
  5: 57.5,
  6: 93.8,
  7: 141.8,
  8: 202.7,
  9: 277.7,
  10: 367.7,
  12: 597.4,
  14: 899.7,
  16: 1282.0,
  18: 1751.4,
};
const stocked = [4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20];
const anySpeed = { rigid: 99, flexible: 99 };
const limits: VelocityLimits = { 'supply trunk': anySpeed, 'supply branch': anySpeed, return: anySpeed };

const run = (length: number, kind: DuctKind): DuctSection => ({
  id: 'run',
  name: 'run',
  side: 'supply',
  kind,
  diameter: 0.2,
  area: Math.PI * 0.01,
  length,
  surface: 0,
  roughness: 0,
  // Fully extended: no slack, so that flexible stays so in every size.
  frictionFactor: 1,
  lossCoefficient: 0,
  insulation: 1,
  leakage: 0,
  place: 'attic',
  supports: 1.2,
});

const need = (flow: number, length: number, kind: DuctKind): SectionNeed => ({
  section: run(length, kind),
  fittings: [],
  flow: flow * cfm,
  role: 'supply branch',
  air: { density: 1.204, viscosity: 1.825e-5 },
  shapes: stockOf(kind),
  space: {},
  limits,
  book: priceBook({}, []),
  joints: undefined,
});

const feet = 0.3048;

/** The cheapest size of a single run of 100 ft within so much per 100 ft. */
function chosen(flow: number, kind: DuctKind, rate: number): string | undefined {
  const section: SizingSection = {
    id: 'run',
    side: 'supply',
    end: 0,
    options: allowedOptions(need(flow, 100 * feet, kind)),
  };
  const solved = solveSizing({ sections: [section], budget: rate * inH2O, goal: 'money' });
  return solved.status === 'fits' ? solved.best.choice.run : undefined;
}

const named = (inches: number | undefined, kind: 'round' | 'flexible') =>
  inches === undefined ? undefined : shapeId({ kind, diameter: inches * inch });

describe('equal friction by hand', () => {
  const rows = [
    ...Object.entries(metal).flatMap(([rate, row]) =>
      Object.entries(row).map(([d, flow]) => ['round', Number(rate), Number(d), flow] as const),
    ),
    ...Object.entries(flexible).map(([d, flow]) => ['flexible', 0.1, Number(d), flow] as const),
  ];

  it.each(rows)(
    '%s at %s inH2O per 100 ft: %s in carries its flow of the chart, and no more',
    (kind, rate, d, flow) => {
      const larger = stocked[stocked.indexOf(d) + 1];
      expect(chosen(flow * 0.998, kind, rate)).toBe(named(d, kind));
      expect(chosen(flow * 1.002, kind, rate)).toBe(named(larger, kind));
    },
  );

  it('chooses for a whole tree no dearer than the chart does at the same friction everywhere', () => {
    // A trunk of 40 ft with 400 cfm, then 25 ft with 200, and branches of 100 cfm: 10, 8 and 6 in by the chart at 0.1.
    const sections = [
      { id: 'trunk', flow: 400, length: 40, chart: 10 },
      { id: 'second', from: 'trunk', flow: 200, length: 25, chart: 8 },
      ...['a', 'b'].map((id) => ({ id, from: 'trunk', flow: 100, length: 20, chart: 6 })),
      ...['c', 'd'].map((id) => ({ id, from: 'second', flow: 100, length: 30, chart: 6 })),
    ].map(({ id, flow, length, chart, ...at }) => ({
      chart: named(chart, 'round') ?? '',
      section: {
        id,
        side: 'supply' as const,
        end: 0,
        ...at,
        options: allowedOptions(need(flow, length * feet, 'round')),
      },
    }));
    const budget = (0.1 * inH2O * (40 + 25 + 30)) / 100;
    const solved = solveSizing({ sections: sections.map((s) => s.section), budget, goal: 'money' });
    if (solved.status !== 'fits') throw new Error('the chart sizes fit');
    const byChart = sections.reduce((a, s) => a + (s.section.options.find((o) => o.id === s.chart)?.money ?? 0), 0);
    expect(solved.best.totals.money).toBeLessThanOrEqual(byChart);
    // By the chart: 40 ft of 10 in at 400 cfm lose 0.034 inH2O, 25 ft of 7 in at 200 cfm 0.035, 30 ft of 6 in at 100 cfm
    // 0.025: 0.094 of the 0.095 there is. A near branch of 5 in loses 0.042 in 20 ft and fits; a trunk of 9 in would not.
    expect(solved.best.choice).toEqual({
      trunk: 'round 254',
      second: 'round 178',
      a: 'round 127',
      b: 'round 127',
      c: 'round 152',
      d: 'round 152',
    });
  });
});
