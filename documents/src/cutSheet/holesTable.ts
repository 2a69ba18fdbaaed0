import type { System } from '@kneewall/project';
import { margin } from '../sheet/paper.ts';
import { schedule } from '../sheet/schedule.ts';
import type { Svg } from '../sheet/svg.ts';
import { bothCutLengths } from './cutLength.ts';
import { holeSize } from './holesOf.ts';
import type { LaidSheet } from './laidSheets.ts';

/** Every hole of a sheet's pieces, from their black corners. */
export function holesTable(pieces: LaidSheet['pieces'], y: number, units: System): Svg[] {
  const rows = pieces.flatMap(({ mark, holes }) =>
    holes.map((h) => [
      mark,
      h.name,
      h.side,
      holeSize(h.shape, units),
      bothCutLengths(h.sideways, units),
      bothCutLengths(h.up, units),
      h.how,
    ]),
  );
  if (rows.length === 0) return [];
  const columns = [
    { head: 'In', width: 10 },
    { head: 'Hole for', width: 70 },
    { head: 'Side', width: 22 },
    { head: 'Size', width: 28 },
    { head: '↔ from the corner', width: 42 },
    { head: '↕ from the corner', width: 42 },
    { head: 'How its place was found', width: 150 },
  ];
  return [schedule(margin, y, columns, rows)];
}
