import type { QuantityKind, Range } from '@kneewall/project';
import type { Printer } from '../plan/printer.ts';
import type { Spread } from '../plan/scenario.ts';
import type { FirstAnswer, FirstWinter } from './answer.ts';
import type { Measurement } from './measurements.ts';

/** Headings of the first answer, the same on the screen and on the terminal. */
export const answerTitles = {
  whole: 'What it says so far',
  heating: 'Heat on the coldest night',
  units: 'Which of the units entered would do',
  sizes: 'Size classes that would do',
  stops: 'What stops it outright',
  cooling: 'Cooling on the hottest afternoon',
  contradiction: 'Last winter’s fuel says otherwise',
  change: 'One thing to change',
  next: 'What to find out next',
} as const;

export const nothingStops = 'Nothing entered so far.';

/** Number and unit stay on one line. */
const kept = (text: string): string => text.replace(/ (?=\S*$)/, '\u00a0');
const power = (print: Printer, value: number): string => kept(print.quantity(value, 'power'));
const powers = (print: Printer, range: Range): string => kept(print.range(range, 'power'));

/** The whole answer in one sentence, and a second one where the witnesses contradict each other. */
export function answerSentence(answer: FirstAnswer, print: Printer): string {
  const said = needSentence(answer, print);
  return answer.winter?.verdict === 'contradicts' ? `${said} ${answerTitles.contradiction}.` : said;
}

function needSentence({ heating, night, units, partly }: FirstAnswer, print: Printer): string {
  if (!heating) return 'A few answers more, and the heat this house needs can be said.';
  const about = kept(print.rounded(heating.likely, 'power'));
  if (partly) return `On the coldest normal night the rooms entered so far need about ${about} of heat.`;
  const need = `On the coldest normal night this house needs about ${about} of heat`;
  if (units.length === 0) {
    const at = night === undefined ? '' : ` at ${kept(print.quantity(night, 'temperature'))}`;
    return `${need}; a unit that still gives ${powers(print, heating)}${at} would do.`;
  }
  const holding = units.filter((u) => u.spare && u.spare.likely >= 0);
  if (holding.length === 0) return `${need}, and none of the units entered gives that much then.`;
  return `${need}, and ${holding.map((u) => u.name).join(' and ')} would hold it.`;
}

/** What the answer stands on, so that nobody wonders why it moved: when the rooms came, or when the hours were worked out. */
export function basisWords(answer: FirstAnswer, print: Printer): string | undefined {
  const said = standsOn(answer);
  if (said === undefined || answer.sums === undefined || answer.partly) return said;
  return `${said} It is worked out hour by hour. Plain sums, which stand here until that is done, say ${power(print, answer.sums)}: they leave out that cold walls see each other, and what walls and furniture hold back.`;
}

const standsOn = ({ heating, basis, partly }: FirstAnswer): string | undefined => {
  if (!heating) return undefined;
  if (partly) return `${partly} Heat, cooling and units here are for these rooms alone: choose no unit by them yet.`;
  return basis === 'rooms'
    ? 'This is the sum of the rooms you entered. The age of the house and its floor area no longer count in it.'
    : 'This stands on the answers here alone: walls, windows and insulation are taken as houses of that age have them on the whole. Rooms entered under Loads take their place, and the range narrows.';
};

export const sizesWords = (heating: Range, print: Printer): string =>
  `Units that give ${powers(print, heating)} on that night. That is what a data sheet must show at that outdoor temperature, not the size printed on the box.`;

/** A unit and what it has to spare on the cold night. */
export function unitWords({ name, spare }: FirstAnswer['units'][number], print: Printer): string {
  if (!spare) return name;
  return `${name}: ${spare.likely >= 0 ? 'to spare' : 'short by'} ${power(print, Math.abs(spare.likely))}`;
}

/** What became of the two witnesses. */
export function winterWords({ verdict, house, fuel }: FirstWinter, print: Printer): string {
  const [byHouse, byFuel] = [powers(print, house), powers(print, fuel)];
  if (verdict === 'narrows')
    return `Narrowed by last winter’s fuel: that alone says ${byFuel}, the house as entered ${byHouse}.`;
  if (verdict === 'adds-nothing')
    return `Last winter’s fuel does not contradict it: that alone says ${byFuel}, too rough to narrow this.`;
  return `By the fuel burned it would be ${byFuel}; by the house as entered, ${byHouse}. One of the two is wrong, so nothing is narrowed. Check how much was burned and how warm it was kept, then the draughts and the insulation.`;
}

/** The unknown that makes a range widest; undefined where there is none. */
export function largestUnknown(
  { drivers }: Spread,
  kind: QuantityKind,
  label: (path: string) => string,
  print: Printer,
): string | undefined {
  const [first] = drivers;
  if (!first) return undefined;
  const worth = kept(print.rounded(Math.max(Math.abs(first.atLow), Math.abs(first.atHigh)), kind));
  return `Largest unknown: ${label(first.path)}, worth up to ${worth}.`;
}

/** How long a measurement takes and what it is good for; goes after its `how`. */
export function measurementWorth(
  { path, minutes, reach }: Measurement,
  label: (path: string) => string,
  print: Printer,
): string {
  const time = minutes === undefined ? '' : ` (about ${minutes} minutes)`;
  return `${time}. It settles “${label(path)}”, worth up to ${power(print, reach)}.`;
}
