// Source: a board maker's table, closed formulas, and refolding by arithmetic of its own. See README.md.
import {
  areaOfFlat,
  bendAllowance,
  bendDeduction,
  boardOf,
  cylinderBlank,
  halfPerimeterMost,
  roundWrap,
  roundWrapPublished,
  steelPerArea,
  stretchOut,
  unfoldBox,
  unfoldTransition,
  unfoldWrap,
} from '@kneewall/engine/physics';
import { checker } from '../src/checker.ts';
import type { Row, ValidationSource } from '../src/row.ts';
import { numbersFrom, randomBox } from './randomBoxes.ts';
import { missOf } from './refold.ts';
import { transitionRows } from './transitions.ts';

const id = 'unfolding';
const check = checker(id);
const inch = 0.0254;
const sheet = { width: 120 * inch, height: 48 * inch };
const inches = (m: number | undefined): number | undefined => (m === undefined ? undefined : m / inch);

/** Thickness, stretch-out, largest half-perimeter from the long and the short side, in. */
const table = [
  [1, 8, 56, 20],
  [1.5, 12.5, 53.75, 17.75],
  [2, 16.625, 51.6875, 15.6875],
] as const;

function tableRows(): Row[] {
  return table.flatMap(([t, out, long, short]) => {
    const board = boardOf(t * inch);
    const name = `${t} in board`;
    return [
      check(
        name,
        'stretch-out',
        'in',
        out,
        1e-9,
        board && inches(stretchOut(board)),
        t === 2 ? 'looked up' : 'computed',
      ),
      check(name, 'half-perimeter, 120 in', 'in', long, 1e-9, board && inches(halfPerimeterMost(board, sheet.width))),
      check(name, 'half-perimeter, 48 in', 'in', short, 1e-9, board && inches(halfPerimeterMost(board, sheet.height))),
    ];
  });
}

/** 16 in high, 20 in wide inside, 1 in board: lines from the left edge. */
function boxRows(): Row[] {
  const box = {
    id: 'box',
    width: 20 * inch,
    height: 16 * inch,
    length: 40 * inch,
    openings: [],
    caps: { start: false, end: true },
    form: 'one' as const,
    sheet,
  };
  const flat = unfoldBox({ ...box, thickness: inch });
  const thick = unfoldBox({ ...box, thickness: 1.5 * inch });
  const [piece, cap] = flat.pieces;
  const edges = piece?.measures.filter((m) => m.of === 'edge').map((m) => m.length / inch) ?? [];
  const outside = (u: typeof flat) => [u.outside.height / inch, u.outside.width / inch] as const;
  const name = '16 x 20 in';
  return [
    ...[17.75, 39.5, 57.25, 78.625, 80].map((x, i) => check(name, `line ${i + 1}`, 'in', x, 1 / 16, edges[i])),
    check(name, 'board length', 'in', 80, 1e-9, inches(piece?.size.width)),
    check(name, 'outside height, 1 in', 'in', 18, 1e-9, outside(flat)[0]),
    check(name, 'outside width, 1 in', 'in', 22, 1e-9, outside(flat)[1]),
    check(name, 'outside height, 1 1/2 in', 'in', 19, 1e-9, outside(thick)[0]),
    check(name, 'outside width, 1 1/2 in', 'in', 23, 1e-9, outside(thick)[1]),
    check(name, 'cap width', 'in', 22, 1e-9, inches(cap?.size.width), 'common practice'),
    check(name, 'cap height', 'in', 18, 1e-9, inches(cap?.size.height), 'common practice'),
  ];
}

/** 60 boxes of all forms and boards, refolded; those that no sheet takes are counted, so that they cannot be dropped. */
function refoldRows(): Row[] {
  const next = numbersFrom(4711);
  const boxes = Array.from({ length: 60 }, (_, n) => randomBox(n, next));
  let folded = 0;
  const rows = boxes.flatMap((box) => {
    const flat = unfoldBox(box);
    if (flat.pieces.length === 0) return [];
    folded++;
    const miss = missOf(box, flat, box.thickness / 2);
    return [check(`${box.id}, ${flat.form}`, 'refolded, largest miss', 'mm', 0, 0.1, 1000 * miss)];
  });
  return [...rows, check('60 random boxes', 'folded', '', 60, 0, folded)];
}

// Thickness, radius in mm, neutral line; allowance, deduction.
const bends = [
  [0.7, 0.8, 0.33, 1.619491, 1.380509],
  [0.55, 0.8, 0.33, 1.541737, 1.158263],
  [1, 1, 0.44, 2.261947, 1.738053],
] as const;

function metalRows(): Row[] {
  const wrap = {
    id: 'wrap',
    width: 0.4,
    height: 0.3,
    length: 1,
    thickness: 0.0007,
    radius: 0.0008,
    neutral: 0.33,
    lap: 0.025,
  };
  const piece = unfoldWrap(wrap).piece;
  return [
    ...bends.flatMap(([thickness, radius, neutral, allowance, deduction]) => {
      const bend = { thickness, radius, neutral, angle: 90 };
      return [
        check(`${thickness} mm sheet`, 'bend allowance', 'mm', allowance, 1e-6, bendAllowance(bend)),
        check(`${thickness} mm sheet`, 'bend deduction', 'mm', deduction, 1e-6, bendDeduction(bend)),
      ];
    }),
    check('wrap of 400 x 300', 'flat width', 'mm', 1419.478, 0.001, 1000 * (piece?.size.width ?? Number.NaN)),
    check('wrap of 400 x 300', 'flat area', 'm²', 1.419478, 1e-6, piece && areaOfFlat(piece)),
    check('8 in pipe', 'blank', 'in', 25.883, 0.001, inches(cylinderBlank(8 * inch, 0.75 * inch))),
    check(
      '8 in duct, 1 1/2 in',
      'wrap by geometry',
      'in',
      36.558,
      0.01,
      inches(roundWrap(8 * inch, 1.5 * inch, 2 * inch)),
    ),
    check(
      '8 in duct, 1 1/2 in',
      'wrap by the table',
      'in',
      34.6,
      0.1,
      inches(roundWrapPublished(8 * inch, 1.5 * inch)),
      'from memory',
    ),
    ...(
      [
        [0.0157, 0.641],
        [0.0187, 0.764],
        [0.0217, 0.886],
        [0.0276, 1.127],
        [0.0336, 1.372],
      ] as const
    ).map(([t, mass]) =>
      check(`steel of ${t} in`, 'mass', 'lb/ft²', mass, 0.001, (steelPerArea(t * inch) * 0.3048 ** 2) / 0.45359237),
    ),
  ];
}

export const source: ValidationSource = {
  id,
  title: 'Boxes and sheet metal, flat and folded again',
  measure: () => [...tableRows(), ...boxRows(), ...refoldRows(), ...metalRows(), ...transitionRows(unfoldTransition)],
};
