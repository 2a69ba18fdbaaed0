import type { Judged, Words } from '../plan/judge.ts';
import type { Printer } from '../plan/printer.ts';

/** How a finding of this trade is put into words, and what such words are made of. */
export type Say = (j: Judged, print: Printer) => Words;

export const has = (j: Judged, key: string): boolean => j.facts?.[key] !== undefined;
export const done = 'Nothing to do.';
export const likely = (j: Judged): number =>
  j.value.ok ? (typeof j.value.value === 'number' ? j.value.value : j.value.value.likely) : 0;
export const hours = (j: Judged, print: Printer): string =>
  likely(j) === 0 ? 'no hour' : print.inUnit(likely(j), 'time', 'h');
export const inDays = (seconds: number, print: Printer): string =>
  print.inUnit(seconds, 'time', seconds < 2 * 86_400 ? 'h' : 'days');
export const litres = (print: Printer, amount: number): string =>
  print.inUnit(amount / 1000, 'volume', print.system === 'us' ? 'gal' : 'L');

export const electric =
  'Batteries and panels stay live with every switch off, and a short across a battery burns: have a licensed electrician wire it, by the local code and the makers’ instructions.';
export const gas =
  'A failing lithium battery gives off gas that burns and poisons, lead gives off hydrogen: keep either out of bedrooms and escape ways, and follow the local fire code for where it may stand.';
