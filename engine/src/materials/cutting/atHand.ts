import { inOrder, type ResolvedProject } from '@kneewall/project';
import { type Scenario, scenario } from '../../plan/scenario.ts';
import { amountIn } from '../list/soldIn.ts';
import type { HandLength, HandSheet } from './result.ts';

/** m by which two diameters differ and are still one. */
const sameSize = 5e-4;

type Project = Pick<ResolvedProject, 'work'>;
type Entry = ResolvedProject['work']['stock'][string];

/** The name of stock at hand in a plan: no piece that is bought has it. */
export const handId = (id: string): string => `hand ${id}`;

const pieces = (x: Entry): number => (x.amount === undefined ? 1 : Math.floor(amountIn(x.amount, 'count', 1) ?? 0));

/** Sheets of board or metal at hand whose sizes are entered; a size that the sheet is sold in stands in for one that is not. */
export function sheetsAtHand(
  { work }: Project,
  of: 'board' | 'metal' | 'panel',
  usual: { readonly width: number; readonly length: number },
): HandSheet[] {
  const s = scenario();
  return inOrder(work.stock).flatMap(([id, x]): HandSheet[] => {
    if (!('choice' in x.sheet) || x.sheet.choice !== of) return [];
    const [length, across, thickness] = [s.maybe(x.length), s.maybe(x.across), s.maybe(x.thickness)];
    // A left-over sheet of which one side is not entered is left alone: nobody knows how large it is.
    if ((length === undefined) !== (across === undefined) || pieces(x) < 1) return [];
    return [
      {
        id,
        name: x.name ?? id,
        length: length ?? usual.length,
        width: across ?? usual.width,
        ...(thickness === undefined ? {} : { thickness }),
        count: pieces(x),
      },
    ];
  });
}

/**
 * Lengths of round or flexible duct at hand. With the length of one piece the amount counts pieces; without it the amount is
 * one piece, or whole ones as it is sold and a last one where it is more than that.
 */
export function ductAtHand(
  { work }: Project,
  kind: 'round' | 'flexible',
  diameter: number,
  sold: number,
): HandLength[] {
  const s = scenario();
  return inOrder(work.stock).flatMap(([id, x]): HandLength[] => {
    const own = s.maybe(x.diameter);
    const isKind = 'choice' in x.duct && x.duct.choice === kind;
    const byKind = isKind && own !== undefined && Math.abs(own - diameter) < sameSize;
    // Ticked on the list as at hand it says no lengths; with the length of a piece it does.
    const byLine = x.line === `air/${kind} ${Math.round(diameter * 1000)}` && s.maybe(x.length) !== undefined;
    if (!byKind && !byLine) return [];
    return lengthsOfEntry(id, x, sold, s);
  });
}

/** What an entry is in lengths: see `ductAtHand`. */
export function lengthsOfEntry(id: string, x: Entry, sold: number, s: Scenario): HandLength[] {
  const named = { id, name: x.name ?? id };
  const each = s.maybe(x.length);
  if (each !== undefined) return pieces(x) >= 1 ? [{ ...named, length: each, count: pieces(x) }] : [];
  const all = x.amount === undefined ? 0 : (amountIn(x.amount, 'length', sold) ?? 0);
  const whole = Math.floor(all / sold + 1e-9);
  const rest = all - whole * sold;
  return [
    ...(whole > 0 ? [{ ...named, length: sold, count: whole }] : []),
    ...(rest > 0.01 ? [{ ...named, id: `${id} rest`, length: rest, count: 1 }] : []),
  ];
}
