import type { Judged, Words } from './judge.ts';
import type { Because } from './outcome.ts';
import type { Printer } from './printer.ts';

const reasons: Readonly<Record<Because, (names: string) => string>> = {
  missing: (names) => `Enter: ${names}.`,
  pending: () => 'It is still being worked out; leave the page open.',
  'not-converged': () => 'The flows did not settle. Check the ducts for a section with an odd size, then look again.',
  'out-of-range': (names) =>
    names === ''
      ? 'Nothing can be reckoned with what is entered. Look for a zero or an odd number in what was changed last.'
      : `Nothing can be reckoned with what is entered. Look again at: ${names}.`,
  fault: () => 'This is a mistake in the program. Report it with the project file.',
};

/** Rows and curves that a maker states: more of them can be asked for. */
const ofTheSheet = (path: string): boolean => /^candidates\.[^.]+\.(rows|blower\.speeds)/.test(path);
const sheetEnds = (names: string) => `The data sheet does not reach that far. Ask for more rows of it: ${names}.`;

/** Words for a statement that cannot be made: what it is about, and what would make it known. */
export function unknownWords(j: Judged, print: Printer, what: string, why = 'Unknown is not the same as fine.'): Words {
  const needs = j.needs ?? [];
  const names = [...new Set(needs.map((path) => print.field(path)))].slice(0, 4).join(', ');
  const because = j.because ?? 'missing';
  const say = because === 'out-of-range' && needs.some(ofTheSheet) ? sheetEnds : reasons[because];
  return { what, why, mend: say(names) };
}
