import { areaOfFlat, type FlatTransition, type Place, type Spot, type Transition } from '@kneewall/engine/physics';
import { checker } from '../src/checker.ts';
import type { Row } from '../src/row.ts';

const check = checker('unfolding');

const base = { id: 'piece', offset: [0, 0] as const, parts: 90, seam: 0, length: 0.5 };
const rectangle = (width: number, height: number) => ({ kind: 'rectangle' as const, width, height });
const round = (diameter: number) => ({ kind: 'round' as const, diameter });

/** A trapezoid's area by its two sides and the height of its slope. */
const trapezoid = (a: number, b: number, slope: number): number => ((a + b) / 2) * slope;

/** Cases with areas by closed formula, m². */
const cases: readonly (readonly [name: string, t: Transition, area: number])[] = [
  ['cylinder', { ...base, start: round(0.2), end: round(0.2) }, Math.PI * 0.2 * 0.5],
  ['cone', { ...base, start: round(0.3), end: round(0.2) }, Math.PI * 0.25 * Math.hypot(0.5, 0.05)],
  ['box', { ...base, start: rectangle(0.4, 0.3), end: rectangle(0.4, 0.3) }, 2 * 0.7 * 0.5],
  // The walls lean by the offset; those along it keep their area.
  [
    'offset box',
    { ...base, start: rectangle(0.4, 0.3), end: rectangle(0.4, 0.3), offset: [0.2, 0] },
    2 * 0.4 * 0.5 + 2 * 0.3 * Math.hypot(0.5, 0.2),
  ],
  [
    'square taper',
    { ...base, start: rectangle(0.4, 0.3), end: rectangle(0.2, 0.2) },
    2 * trapezoid(0.4, 0.2, Math.hypot(0.5, 0.05)) + 2 * trapezoid(0.3, 0.2, Math.hypot(0.5, 0.1)),
  ],
];

const apart = (a: Place | Spot, b: Place | Spot): number => Math.hypot(...a.map((x, i) => x - (b[i] ?? 0)));
const edges = (p: readonly (Place | Spot)[]): number[] => p.map((x, i) => apart(x, p[(i + 1) % p.length] ?? x));

/** Largest difference between an edge that stands and the same laid flat. */
const lengthMiss = (t: FlatTransition): number =>
  Math.max(
    ...t.triangles.flatMap(({ flat, stands }) => {
      const standing = edges(stands);
      return edges(flat).map((x, i) => Math.abs(x - (standing[i] ?? Number.NaN)));
    }),
  );

/** Heron. */
const areaOf = (p: readonly Place[]): number => {
  const [a = 0, b = 0, c = 0] = edges(p);
  const s = (a + b + c) / 2;
  return Math.sqrt(Math.max(0, s * (s - a) * (s - b) * (s - c)));
};

export function transitionRows(unfold: (t: Transition) => FlatTransition): Row[] {
  const closed = cases.flatMap(([name, t, area]) => {
    const flat = unfold(t);
    const chord = t.start.kind === 'round' ? 2e-4 * area : 1e-9;
    return [
      check(name, 'flat area', 'm²', area, chord, flat.piece && areaOfFlat(flat.piece)),
      check(name, 'true lengths', 'm', 0, 1e-9, lengthMiss(flat)),
    ];
  });
  const joints: readonly (readonly [string, Transition])[] = [
    ['square to round', { ...base, parts: 4, start: rectangle(0.4, 0.3), end: round(0.25) }],
    [
      'square to round, offset',
      { ...base, parts: 6, start: rectangle(0.4, 0.3), end: round(0.25), offset: [0.1, -0.05] },
    ],
    ['round to square', { ...base, parts: 5, start: round(0.3), end: rectangle(0.2, 0.2), offset: [0, 0.15] }],
    ['taper, offset', { ...base, start: rectangle(0.4, 0.3), end: rectangle(0.2, 0.25), offset: [0.1, 0.2] }],
  ];
  const stands = joints.flatMap(([name, t]) => {
    const flat = unfold(t);
    const area = flat.triangles.reduce((sum, x) => sum + areaOf(x.stands), 0);
    return [
      check(name, 'flat area as it stands', 'm²', area, 1e-9, flat.piece && areaOfFlat(flat.piece)),
      check(name, 'true lengths', 'm', 0, 1e-9, lengthMiss(flat)),
    ];
  });
  const taper = unfold({ ...base, start: rectangle(0.4, 0.3), end: rectangle(0.2, 0.2) });
  const folds = taper.piece?.lines.filter((l) => l.kind === 'fold').length;
  return [...closed, ...stands, check('square taper', 'bends', '', 3, 0, folds)];
}
