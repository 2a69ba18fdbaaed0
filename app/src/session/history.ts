import { type Edit, inverse } from '@kneewall/project';
import type { Act } from './act.ts';

/** What can be taken back and what can be done again, the latest last. */
export type History = { readonly undo: readonly Act[]; readonly redo: readonly Act[] };

export const noHistory: History = { undo: [], redo: [] };

/** The history after one more act. Following a whole log with it gives the history a restart had. */
export function followed({ undo, redo }: History, act: Act): History {
  if (act.kind === 'do') return { undo: [...undo, act], redo: [] };
  if (act.kind === 'undo') return { undo: undo.slice(0, -1), redo: [...redo, act] };
  return { undo: [...undo, act], redo: redo.slice(0, -1) };
}

export const historyOf = (acts: readonly Act[]): History => acts.reduce(followed, noHistory);

/** The edits that take an act back, in the order in which they have to be made. */
export const takenBack = (act: Act, firstSeq: number): Edit[] =>
  act.edits.toReversed().map((edit, i) => inverse(edit, firstSeq + i));
