import { numberIn } from '../../plan/facts.ts';
import type { Judged, Words } from '../../plan/judge.ts';
import type { Printer } from '../../plan/printer.ts';

/** Words for one kind of finding of the cuts. */
export type Say = (j: Judged, print: Printer) => Words;

/** A fact that is a length. */
export const long = (j: Judged, print: Printer, name: string): string => print.quantity(numberIn(j, name), 'length');
