import type { System } from '@kneewall/project';
import { margin } from '../sheet/paper.ts';
import { schedule } from '../sheet/schedule.ts';
import type { Svg } from '../sheet/svg.ts';
import { cutLength } from './cutLength.ts';
import type { LaidSheet } from './laidSheets.ts';
import { cornersOf, isShaped } from './shaped.ts';

/** More corners than these stand in the cut list alone. */
const most = 14;

const shapedOf = (pieces: LaidSheet['pieces']): LaidSheet['pieces'] => pieces.filter((p) => isShaped(p.piece));

/** Rows that the tables of corners take, their heads counted: two pieces stand side by side. */
export const shapedRows = (pieces: LaidSheet['pieces']): number => {
  const n = shapedOf(pieces).length;
  return n === 0 ? 0 : Math.ceil(n / 2) + 2;
};

/** Corners of pieces that are cut along slanting lines, each piece in a cell: sideways and up from its black corner. */
export function cornersTable(pieces: LaidSheet['pieces'], y: number, units: System): Svg[] {
  const rows = shapedOf(pieces).map((marked) => {
    const corners = cornersOf(marked);
    const said = corners.map(
      ({ sideways, up }, i) => `${i + 1}: ${cutLength(sideways, units)}, ${cutLength(up, units)}`,
    );
    return [marked.mark, corners.length > most ? `${corners.length} corners: see the cut list` : said.join(';  ')];
  });
  const half = Math.ceil(rows.length / 2);
  const columns = [
    { head: 'In', width: 10 },
    { head: 'Corners by number: ↔ sideways, ↕ up from the black corner of the rectangle about it', width: 180 },
  ];
  return [rows.slice(0, half), rows.slice(half)].flatMap((own, i) =>
    own.length === 0 ? [] : [schedule(margin + i * 200, y, columns, own)],
  );
}
