import type { Plan } from '@kneewall/engine';
import type { System } from '@kneewall/project';
import type { CutMeasure } from './cutMeasure.ts';
import { cutMeasures } from './cutMeasures.ts';
import { titleOf } from './cutSheetSvg.ts';
import { holeSize } from './holesOf.ts';
import { laidSheets } from './laidSheets.ts';
import { straightCuts } from './straightCuts.ts';

/** One line of the cut list: what it is cut from, the piece, and what to mark out or cut. */
export type CutRow = CutMeasure & {
  readonly from: string;
  readonly piece: string;
  readonly mark?: string;
  readonly size?: string;
};

/** The whole cut list: flat pieces sheet by sheet, then round duct and flexible duct. Empty until the pieces are laid out. */
export const cutRows = (plan: Pick<Plan, 'trades'>, units: System): CutRow[] => [
  ...laidSheets(plan).flatMap((laid) => [
    ...laid.pieces.flatMap((marked): CutRow[] => {
      const row = { from: titleOf(laid), piece: `${marked.mark} ${marked.title}`, mark: marked.mark };
      return [
        ...cutMeasures(marked).map((m) => ({ ...row, ...m })),
        ...marked.holes.map((h) => ({
          ...row,
          what: `Hole for “${h.name}”, ${h.side}: ${h.how}`,
          sideways: h.sideways,
          up: h.up,
          size: holeSize(h.shape, units),
        })),
      ];
    }),
    ...laid.sheet.rests.flatMap((r): CutRow[] =>
      r.remnant === undefined
        ? []
        : [
            {
              from: titleOf(laid),
              piece: r.remnant,
              what: 'Left over: mark it and keep it',
              sideways: r.width,
              up: r.height,
            },
          ],
    ),
  ]),
  ...straightCuts(plan, units).flatMap(({ from, cuts }) => cuts.map((c) => ({ from, ...c }))),
];
