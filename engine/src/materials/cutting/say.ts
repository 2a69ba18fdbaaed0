import type { Judged, Words } from '../../plan/judge.ts';
import type { Printer } from '../../plan/printer.ts';

/** Words for one kind of finding of the cuts. */
export type Say = (j: Judged, print: Printer) => Words;
export const fact = (j: Judged, name: string): string => String(j.facts?.[name] ?? '');
/** A fact that is a length. */
export const long = (j: Judged, print: Printer, name: string): string =>
  print.quantity(Number(j.facts?.[name] ?? 0), 'length');
