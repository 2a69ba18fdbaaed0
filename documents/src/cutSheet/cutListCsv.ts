import type { Plan } from '@kneewall/engine';
import type { System } from '@kneewall/project';
import { csvCell } from '../materialsCsv.ts';
import { bothCutLengths } from './cutLength.ts';
import { cutRows } from './cutRows.ts';

/** Every piece with all its measures, round duct and flexible duct, one line each: words in both systems, and plain millimetres. */
export function cutListCsv(plan: Pick<Plan, 'trades'>, units: System): string {
  const mm = (m: number | undefined) => (m === undefined ? '' : String(Math.round(m * 10000) / 10));
  const both = (m: number | undefined) => (m === undefined ? '' : csvCell(bothCutLengths(m, units)));
  const rows = cutRows(plan, units).map((r) =>
    [
      csvCell(r.from),
      csvCell(r.piece),
      csvCell(r.what),
      both(r.sideways),
      both(r.up),
      both(r.length),
      csvCell(r.size ?? ''),
      mm(r.sideways),
      mm(r.up),
      mm(r.length),
    ].join(','),
  );
  const head = 'From,Piece,What,Sideways,Up,Length,Size of hole,Sideways mm,Up mm,Length mm';
  return `${[head, ...rows].join('\r\n')}\r\n`;
}
