import type { System } from '@kneewall/project';
import { margin } from '../sheet/paper.ts';
import { schedule } from '../sheet/schedule.ts';
import type { Svg } from '../sheet/svg.ts';
import { cutLength } from './cutLength.ts';
import type { LaidSheet } from './laidSheets.ts';
import { cornersOf, isShaped } from './shaped.ts';

/** More corners than these stand in the cut list alone. */
const most = 14;

/** Letters that a row of the table holds. */
const rowLetters = 122;

/** The corners of each shaped piece as rows, its letter before the first; two pieces stand side by side. */
const rowsOf = (pieces: LaidSheet['pieces'], units: System): string[][][] =>
  pieces
    .filter((p) => isShaped(p.piece))
    .map((marked) => {
      const corners = cornersOf(marked);
      if (corners.length > most) return [[marked.mark, `${corners.length} corners: see the cut list`]];
      const said = corners.map(
        ({ sideways, up }, i) => `${i + 1}: ${cutLength(sideways, units)}, ${cutLength(up, units)}`,
      );
      return inRows(said).map((row, i) => [i === 0 ? marked.mark : '', row]);
    });

/** Corners joined to rows, none of which is too long for the table: a measure is never cut off. */
function inRows(said: readonly string[]): string[] {
  const rows: string[] = [];
  for (const one of said) {
    const longer = rows.length === 0 ? one : `${rows.at(-1)};  ${one}`;
    if (rows.length > 0 && longer.length <= rowLetters) rows[rows.length - 1] = longer;
    else rows.push(one);
  }
  return rows;
}

/** The two columns of pieces. */
function halves(rows: readonly string[][][]): (readonly string[][])[] {
  const half = Math.ceil(rows.length / 2);
  return [rows.slice(0, half).flat(), rows.slice(half).flat()];
}

/** Rows that the tables of corners take, their heads counted. */
export function shapedRows(pieces: LaidSheet['pieces'], units: System): number {
  const rows = rowsOf(pieces, units);
  return rows.length === 0 ? 0 : Math.max(...halves(rows).map((half) => half.length)) + 2;
}

/** Corners of pieces that are cut along slanting lines: sideways and up from its black corner. */
export function cornersTable(pieces: LaidSheet['pieces'], y: number, units: System): Svg[] {
  const columns = [
    { head: 'In', width: 10 },
    { head: 'Corners by number: ↔ sideways, ↕ up from the black corner of the rectangle about it', width: 180 },
  ];
  return halves(rowsOf(pieces, units)).flatMap((own, i) =>
    own.length === 0 ? [] : [schedule(margin + i * 200, y, columns, own)],
  );
}
