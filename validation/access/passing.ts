// Source: closed forms of corners, rectangles and tilted boxes. See README.md.
import {
  cornerSpare,
  faceSpare,
  longestRod,
  longestTurning,
  posesThrough,
  steepestTilt,
  symmetrical,
  topAt,
  widestFor,
  widthForTurned,
} from '@kneewall/engine/access';
import type { How, Row } from '../src/row.ts';
import { check } from './check.ts';

const yes = (holds: boolean): number => (holds ? 1 : 0);

const rods = (): Row[] =>
  (
    [
      [2, 4, 8.32387637, 'looked up'],
      [1, 1, 2.828427125, 'computed'],
      [0.9, 1.2, 2.959698767, 'computed'],
      [0.8, 0.8, 2.2627417, 'computed'],
      [27, 8, 46.872166581, 'computed'],
      [0.762, 0.9144, 2.367515796, 'computed'],
    ] as const satisfies readonly (readonly [number, number, number, How])[]
  ).map(([a, b, rod, known]) => check(`corner ${a} by ${b}`, 'longest rod', 'm', rod, 1e-9, longestRod(a, b), known));

// corridors, width, longest, degrees where stated
const turning: readonly (readonly [number, number, number, number, number, number?])[] = [
  [1, 1, 0.5, 1.828427125, 1e-8],
  [1, 1, 0.3, 2.228427125, 1e-8],
  [0.9, 1.2, 0.5, 1.95121201, 1e-8, 39.9538],
  [0.9, 0.9, 0.6, 1.345584412, 1e-8],
  [0.8, 1, 0.55, 1.43301134, 1e-8, 39.8912],
  [36, 36, 21, 59.82338, 1e-5],
  [36, 42, 21, 68.08638, 1e-5],
  [32, 36, 24.5, 46.99206, 1e-5],
];
const turns = (): Row[] =>
  turning.flatMap(([a, b, w, length, tolerance, angle]) => {
    const name = `${w} wide, corner ${a} by ${b}`;
    const found = longestTurning(a, b, w);
    return [
      check(name, 'longest', 'm', length, tolerance, found.length),
      ...(angle === undefined ? [] : [check(name, 'angle', '°', angle, 1e-4, found.angle)]),
    ];
  });

const slides = (): Row[] => [
  check('0.95 by 0.9, corner 0.9 by 1, no turn', 'passes', '', 1, 0, yes(cornerSpare(0.9, 1, 0.95, 0.9) >= 0)),
  check('1.1 by 0.9, corner 0.9 by 1', 'passes', '', 0, 0, yes(cornerSpare(0.9, 1, 1.1, 0.9) >= 0)),
  check('rod of 4.3 in a corner 1.5 by 1.5, level', 'passes', '', 0, 0, yes(longestRod(1.5, 1.5) >= 4.3)),
  check(
    'rod in the slanted plane, 1.5 by 1.5, 2.5 high',
    'longest',
    'm',
    4.9244,
    1e-4,
    Math.hypot(longestRod(1.5, 1.5), 2.5),
  ),
];

// p, q into 30 by 22.5: fits, needed width and second form where stated
const faces: readonly (readonly [number, number, number, number?, number?])[] = [
  [24, 21, 1],
  [31, 5, 1, 18.2354, 2.20995],
  [34, 3, 1, 21.2805, 2.07186],
  [36, 1, 1, 21.5595, 2.05925],
  [32, 6, 0, 22.6579, 1.99197],
  [35, 3, 0, 23.1144, 1.96369],
  [33, 8, 0, 27.8783, 1.72965],
  [31, 10, 0, 27.8274, 1.7672],
  [23, 23, 0],
];
const rectangles = (): Row[] =>
  faces.flatMap(([p, q, fits, needed, second]) => {
    const name = `face ${p} by ${q} into 30 by 22.5`;
    return [
      check(name, 'fits', '', fits, 0, yes(faceSpare([p, q], [30, 22.5]).spare >= 0)),
      ...(needed === undefined ? [] : [check(name, 'needed', 'in', needed, 1e-4, widthForTurned(p, q, 30))]),
      ...(second === undefined ? [] : [check(name, 'second form', '', second, 1e-5, symmetrical(p, q, 30, 22.5))]),
    ];
  });

const widest = (): Row[] => [
  ...(
    [
      [30.5, 7.66686],
      [31, 7.06974],
      [32, 5.91497],
      [33, 4.79738],
      [34, 3.70534],
      [35, 2.63164],
      [36, 1.57153],
      [37, 0.52176],
      [37.5, 0],
    ] as const
  ).map(([p, q]) => check(`length ${p} into 30 by 22.5`, 'widest', 'in', q, 1e-4, widestFor(p, 30, 22.5))),
  check('1.2 by 0.1 into 1 by 1', 'fits', '', 1, 0, yes(faceSpare([1.2, 0.1], [1, 1]).spare >= 0)),
  check('1.05 by 0.2 into 1 by 0.9', 'fits', '', 1, 0, yes(faceSpare([1.05, 0.2], [1, 0.9]).spare >= 0)),
  // The jump: at 30 the whole width, a hair above it about 8.3.
  check('length 30 into 30 by 22.5', 'widest', 'in', 22.5, 1e-9, widestFor(30, 30, 22.5)),
  check('length just over 30 into 30 by 22.5', 'widest', 'in', 8.3, 0.05, widestFor(30 + 1e-7, 30, 22.5)),
];

// slot, depth, thickness, degrees, top for 43 and 53
const tilts: readonly (readonly [number, number, number, number, number, number])[] = [
  [22.5, 17.5, 0, 38.94244, 44.444, 52.222],
  [22.5, 17.5, 9, 21.96644, 46.424, 55.698],
  [22.5, 21, 9, 8.13518, 45.539, 55.438],
  [30, 21, 0, 45.573, 45.097, 52.097],
  [30, 21, 9, 31.19676, 47.659, 56.213],
  [30, 24.5, 9, 21.83603, 49.028, 58.31],
];
const tilted = (): Row[] =>
  tilts.flatMap(([slot, depth, thick, degrees, top43, top53]) => {
    const name = `${depth} deep in a slot of ${slot}, floor ${thick}`;
    const tilt = steepestTilt(slot, depth, thick) ?? Number.NaN;
    return [
      check(name, 'tilt', '°', degrees, 1e-4, (tilt * 180) / Math.PI),
      check(name, 'top of 43', 'in', top43, 1e-3, topAt(43, depth, tilt)),
      check(name, 'top of 53', 'in', top53, 1e-3, topAt(53, depth, tilt)),
    ];
  });

const boxes = (): Row[] => {
  const box = { width: 21, depth: 17.5, height: 53 };
  return [
    check('box 17.5 by 21 by 53', 'diagonal', 'in', 59.6343, 1e-4, Math.hypot(17.5, 21, 53)),
    check('its face of 21 by 53', 'diagonal', 'in', 57.009, 1e-3, Math.hypot(21, 53)),
    ...(
      [
        [30, 22.5, 1],
        [20, 30, 1],
        [18, 24, 1],
        [17, 30, 0],
      ] as const
    ).map(([a, b, fits]) =>
      check(
        `box 21 by 17.5 by 53 into ${a} by ${b}`,
        'a face fits',
        '',
        fits,
        0,
        yes((posesThrough(box, [a, b])[0]?.spare ?? -1) >= 0),
      ),
    ),
  ];
};

export const passingRows = (): Row[] => [
  ...rods(),
  ...turns(),
  ...slides(),
  ...rectangles(),
  ...widest(),
  ...tilted(),
  ...boxes(),
];
