import { wordsIn } from '../plan/facts.ts';
import type { Judged, Words } from '../plan/judge.ts';
import type { Printer } from '../plan/printer.ts';

/** Words for one kind of finding. */
export type Say = (j: Judged, print: Printer) => Words;
export const name = (j: Judged): string => wordsIn(j, 'name');
export const nothingToDo = 'Nothing to do.';
