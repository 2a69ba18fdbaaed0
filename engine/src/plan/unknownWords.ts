import type { Judged, Words } from './judge.ts';
import type { Because } from './outcome.ts';
import type { Printer } from './printer.ts';

const reasons: Readonly<Record<Because, (names: string) => string>> = {
  missing: (names) => `Enter: ${names}.`,
  pending: () => 'It is still being worked out; leave the page open.',
  'not-converged': () => 'The flows did not settle. Check the ducts for a section with an odd size, then look again.',
  'out-of-range': (names) => `The data sheet does not reach that far. Ask for more rows of it: ${names}.`,
  fault: () => 'This is a mistake in the program. Report it with the project file.',
};

/** Words for a statement that cannot be made: what it is about, and what would make it known. */
export function unknownWords(j: Judged, print: Printer, what: string, why = 'Unknown is not the same as fine.'): Words {
  const names = [...new Set((j.needs ?? []).map((path) => print.field(path)))].slice(0, 4).join(', ');
  return { what, why, mend: reasons[j.because ?? 'missing'](names) };
}
