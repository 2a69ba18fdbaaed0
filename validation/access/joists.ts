// Source: statics of a simple beam, and published span tables. See README.md.
import { inertia, longestSpan, modulus, moment, sag, sagPoint, stress } from '@kneewall/engine/access';
import type { How, Row } from '../src/row.ts';
import { check, inch, poundSquareFoot, poundSquareInch } from './check.ts';

const sections = (): Row[] =>
  (
    [
      ['2x6', 5.5, 20.797, 7.5625],
      ['2x8', 7.25, 47.635, 13.141],
      ['2x10', 9.25, 98.932, 21.391],
    ] as const
  ).flatMap(([name, depth, i, s]) => [
    check(name, 'I', 'in⁴', i, 1e-4 * i, inertia(1.5, depth)),
    check(name, 'S', 'in³', s, 1e-4 * s, modulus(1.5, depth)),
  ]);

const beam = (): Row[] => {
  const joist = { width: 0.038, depth: 0.184, span: 3.66, elastic: 9.65e9 };
  const load = { spread: 500, point: 981 };
  const name = '38 by 184 mm over 3.66 m, 0.5 kN/m and 981 N';
  const close = (field: string, unit: string, expected: number, ours: number) =>
    check(name, field, unit, expected, 1e-4 * expected, ours);
  return [
    close('I', 'm⁴', 1.972676e-5, inertia(joist.width, joist.depth)),
    close('S', 'm³', 2.144213e-4, modulus(joist.width, joist.depth)),
    close('moment', 'N m', 1734.84, moment(joist.span, load)),
    close('stress', 'MPa', 8.0908, stress(moment(joist.span, load), joist) / 1e6),
    close('sag', 'mm', 11.4006, 1000 * sag(load, joist)),
    close('moment, 981 N alone at 1 m', 'N m', 712.967, moment(joist.span, { spread: 0, point: 981, at: 1 })),
    close('sag, 981 N alone at 1 m', 'mm', 3.9419, 1000 * sagPoint(981, joist, 1)),
  ];
};

/** Bending value times its share by depth times 1.15 for joists side by side, Pa. */
const bendingOf = (base: number, size: string): number =>
  base * ({ '2x4': 1.5, '2x6': 1.3, '2x8': 1.2, '2x10': 1.1 }[size] ?? Number.NaN) * 1.15 * poundSquareInch;
const depthOf: Readonly<Record<string, number>> = { '2x4': 3.5, '2x6': 5.5, '2x8': 7.25, '2x10': 9.25 };
type Row6 = readonly [
  size: string,
  spacing: number,
  live: number,
  share: number,
  printed: number,
  computed: number,
  known: How,
];
const spruce: readonly Row6[] = [
  ['2x6', 16, 40, 360, 112, 111.8, 'from memory'],
  ['2x8', 16, 40, 360, 147, 147.4, 'looked up'],
  ['2x10', 16, 40, 360, 185, 184.7, 'looked up'],
  ['2x6', 16, 30, 360, 123, 123.1, 'from memory'],
  ['2x8', 16, 30, 360, 162, 162.2, 'from memory'],
  ['2x10', 16, 30, 360, 207, 206.4, 'from memory'],
  ['2x6', 16, 20, 240, 154, 154.1, 'from memory'],
  ['2x8', 16, 20, 240, 195, 195.1, 'from memory'],
  ['2x10', 16, 20, 240, 238, 238.4, 'from memory'],
  ['2x4', 19.2, 20, 240, 96, Number.NaN, 'looked up'],
  ['2x6', 19.2, 20, 240, 141, 140.7, 'looked up'],
  ['2x8', 19.2, 20, 240, 178, 178.1, 'looked up'],
  ['2x10', 19.2, 20, 240, 218, 217.6, 'looked up'],
  ['2x4', 24, 20, 240, 86, Number.NaN, 'looked up'],
  ['2x6', 24, 20, 240, 126, 125.8, 'looked up'],
  ['2x8', 24, 20, 240, 159, 159.3, 'looked up'],
  ['2x10', 24, 20, 240, 195, 194.6, 'looked up'],
];
const fir: readonly Row6[] = [
  ['2x4', 24, 20, 240, 87, Number.NaN, 'looked up'],
  ['2x6', 24, 20, 240, 128, Number.NaN, 'looked up'],
  ['2x8', 24, 20, 240, 162, Number.NaN, 'looked up'],
  ['2x10', 24, 20, 240, 197, Number.NaN, 'looked up'],
  ['2x4', 19.2, 20, 240, 98, Number.NaN, 'looked up'],
  ['2x6', 19.2, 20, 240, 143, Number.NaN, 'looked up'],
  ['2x8', 19.2, 20, 240, 181, Number.NaN, 'looked up'],
  ['2x10', 19.2, 20, 240, 221, Number.NaN, 'looked up'],
];

const spans = (timber: string, rows: readonly Row6[], bending: number, elastic: number): Row[] =>
  rows.flatMap(([size, spacing, live, sagShare, printed, computed, known]) => {
    const ours =
      longestSpan(1.5 * inch, (depthOf[size] ?? 0) * inch, {
        live: live * poundSquareFoot,
        dead: 10 * poundSquareFoot,
        spacing: spacing * inch,
        elastic: elastic * poundSquareInch,
        bending: bendingOf(bending, size),
        sagShare,
      }) / inch;
    const name = `${timber} ${size}, ${spacing} in apart, ${live} and 10 psf`;
    return [
      check(name, 'span, table', 'in', printed, 1, ours, known),
      ...(Number.isNaN(computed) ? [] : [check(name, 'span', 'in', computed, 0.1, ours)]),
    ];
  });

export const joistRows = (): Row[] => [
  ...sections(),
  ...beam(),
  ...spans('spruce-pine-fir', spruce, 875, 1.4e6),
  ...spans('Douglas fir-larch', fir, 900, 1.6e6),
];
