import {
  type BoardForm,
  cutBars,
  cutCoils,
  type FlatPiece,
  packSheets,
  unfoldBox,
} from '../../physics/cutting/index.ts';
import { handId } from './atHand.ts';
import { lengthsOf } from './inputsOf.ts';
import { flatJoints } from './joint/flatJoints.ts';
import { flatMade } from './made/flatMade.ts';
import { flatDuct } from './metalDuct.ts';
import type { CutAnswers, CutBox, CutInputs, FlatBox, HandSheet, SheetsOf } from './result.ts';

const forms: readonly BoardForm[] = ['one', 'l', 'u', 'four'];

/**
 * Every piece that is cut: boxes and metal flat and laid on the fewest sheets, round duct from its lengths, flexible duct from
 * its bags. What is wrong with a box or a duct stands beside it and it is not laid; the others are. Never throws.
 */
export function cutPlan(inputs: CutInputs): CutAnswers {
  const boxes = inputs.boxes.map((box) => flatBox(box, inputs));
  const ducts = inputs.ducts.map((duct) => ({ duct, ...flatDuct(duct, inputs.metal) }));
  const made = flatJoints(inputs);
  const cutMade = flatMade(inputs);
  const between = (of: 'board' | 'metal') =>
    made.flatMap(({ joint, pieces }) =>
      joint.state === 'piece' && joint.piece.of === of
        ? pieces.map((piece) => ({ ...piece, thickness: joint.piece.thickness }))
        : [],
    );
  const runs = [...inputs.pipes, ...inputs.bags].flatMap((p) => p.runs);
  const boards = [...boxes.flatMap(({ flat, box }) => (flat.pieces.length > 0 ? [box] : [])), ...between('board')];
  const thicknesses = thicknessesOf(boards).length;
  return {
    boxes,
    ducts: ducts.map(({ duct, pieces, each, problems }) => ({ ...duct, pieces: pieces.length, each, problems })),
    joints: made.map((m) => m.joint),
    made: cutMade.map((m) => m.made),
    sheets: [
      ...boardSheets(boxes, between('board'), inputs),
      ...metalSheets(
        [
          ...ducts.flatMap((d) => [...d.pieces, ...d.caps].map((piece) => ({ ...piece, for: d.duct.id }))),
          ...between('metal'),
          ...cutMade.flatMap((m) => m.pieces),
        ],
        inputs,
      ),
    ],
    pipes: inputs.pipes.map(({ diameter, stock, runs, atHand }) => ({
      diameter,
      stock,
      plan: cutBars({
        pieces: runs.flatMap((r) => lengthsOf(r, stock)),
        stock: [{ id: 'length', length: stock, cost: 1 }, ...free(atHand)],
        kerf: 0,
        remnantLeast: keepLeast,
      }),
    })),
    bags: inputs.bags.map(({ diameter, coil, runs, atHand }) => ({
      diameter,
      coil,
      plan: cutCoils({
        runs,
        coil,
        sleeve: inputs.sleeve,
        rule: inputs.splices,
        splicesMost: inputs.splicesMost,
        atHand: atHand.map((h) => ({ ...h, id: handId(h.id) })),
      }),
    })),
    unsure: inputs.board.atHand.filter((h) => h.thickness === undefined && thicknesses > 1),
    names: Object.fromEntries([
      ...[...inputs.boxes, ...inputs.ducts, ...inputs.made, ...runs].map(({ id, name }) => [id, name]),
      ...handOf(inputs).map(({ id, name }) => [handId(id), name]),
      ...inputs.joints.flatMap((j) => (j.state === 'piece' ? [[j.piece.id, `Unit to “${j.name}”`]] : [])),
    ]),
  };
}

const handOf = ({
  board,
  metal,
  pipes,
  bags,
}: CutInputs): readonly { readonly id: string; readonly name: string }[] => [
  ...board.atHand,
  ...metal.atHand,
  ...[...pipes, ...bags].flatMap((p) => p.atHand),
];

/** What is at hand costs nothing: a plan takes it before it buys. */
const free = <T extends { readonly id: string }>(atHand: readonly T[]): (T & { readonly cost: 0 })[] =>
  atHand.map((h) => ({ ...h, id: handId(h.id), cost: 0 }));

/** m of round duct worth keeping. */
const keepLeast = 0.3;

function flatBox(box: CutBox, { board }: CutInputs): FlatBox {
  const sheet = { width: board.length, height: board.width };
  const flat = unfoldBox({ ...box.box, form: board.form, sheet });
  if (!flat.problems.some((p) => p.code === 'larger-than-stock')) return { ...box, flat };
  const wayOut = forms.find((form) => unfoldBox({ ...box.box, form, sheet }).problems.length === 0);
  return { ...box, flat, ...(wayOut === undefined ? {} : { wayOut }) };
}

const thicknessesOf = (pieces: readonly { readonly thickness: number }[]): number[] =>
  [...new Set(pieces.map((p) => p.thickness))].sort((a, b) => a - b);

type ThickPiece = FlatPiece & { readonly for: string; readonly thickness: number };

/** A kind of board for each thickness. */
function boardSheets(boxes: readonly FlatBox[], between: readonly ThickPiece[], { board }: CutInputs): SheetsOf[] {
  const all = [
    ...boxes.flatMap((b) => b.flat.pieces.map((piece) => ({ ...piece, for: b.id, thickness: b.box.thickness }))),
    ...between,
  ];
  const thicknesses = thicknessesOf(all);
  return thicknesses.flatMap((thickness): SheetsOf[] => {
    const pieces = all.filter((p) => p.thickness === thickness).map(({ thickness: _, ...piece }) => piece);
    if (pieces.length === 0) return [];
    const atHand = board.atHand.filter(({ thickness: t }) =>
      t === undefined ? thicknesses.length === 1 : Math.abs(t - thickness) < sameThickness,
    );
    return [{ of: 'board', thickness, pieces, plan: packed(pieces, { ...board, id: 'board', atHand }) }];
  });
}

/** m by which two boards differ and are still one thickness, and two metals one gauge. */
const sameThickness = 0.002;
const sameGauge = 0.00008;

function metalSheets(pieces: readonly (FlatPiece & { for: string })[], { metal }: CutInputs): SheetsOf[] {
  if (pieces.length === 0) return [];
  const atHand = metal.atHand.filter(
    ({ thickness: t }) => t === undefined || Math.abs(t - metal.thickness) < sameGauge,
  );
  const plan = packed(pieces, { ...metal, id: 'metal', turns: true, keep: keepLeast, atHand });
  return [{ of: 'metal', thickness: metal.thickness, pieces, plan }];
}

type Sheet = {
  readonly id: string;
  readonly width: number;
  readonly length: number;
  readonly turns: boolean;
  readonly kerf: number;
  readonly keep: number;
  readonly atHand: readonly HandSheet[];
};

const packed = (pieces: readonly FlatPiece[], { id, width, length, turns, kerf, keep, atHand }: Sheet) =>
  packSheets({
    pieces: pieces.map((p) => ({ id: p.id, width: p.size.width, height: p.size.height, count: 1, turns })),
    stock: [
      { id, width: length, height: width, cost: 1 },
      ...free(atHand).map((h) => ({ id: h.id, width: h.length, height: h.width, cost: 0, count: h.count })),
    ],
    kerf,
    trim: 0,
    remnantLeast: keep,
  });
