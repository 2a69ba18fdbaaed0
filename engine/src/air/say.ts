import type { Judged, Words } from '../plan/judge.ts';
import type { Printer } from '../plan/printer.ts';

/** Words for one kind of finding. */
export type Say = (j: Judged, print: Printer) => Words;
export const fact = (j: Judged, key: string): number => Number(j.facts?.[key] ?? 0);
export const name = (j: Judged): string => String(j.facts?.name ?? '');
export const nothingToDo = 'Nothing to do.';
