import { numberIn, wordsIn } from '../plan/facts.ts';
import type { Judged, Words } from '../plan/judge.ts';
import type { Printer } from '../plan/printer.ts';

/** What else would help a piece that does not pass: taken apart, another unit. */
export function helpWords(j: Judged): string {
  const part = numberIn(j, 'part') === 1 ? ' Taken apart, its largest part passes.' : '';
  const others = wordsIn(j, 'others');
  return `${part}${others === '' ? ' None of the units entered passes here.' : ` Of the units entered these pass: ${others}.`}`;
}

/** The opening that was certified to do under the height there is; nothing where none was looked for or found. */
const openingWords = (j: Judged, print: Printer): string =>
  numberIn(j, 'plannedLong') > 0
    ? ` An opening of ${print.quantity(numberIn(j, 'plannedLong'), 'length')} by ${print.quantity(numberIn(j, 'plannedShort'), 'length')} in the clear would do.`
    : '';

const heightWords = (j: Judged, print: Printer): string =>
  numberIn(j, 'headroomPlanned') > 0
    ? `${print.quantity(numberIn(j, 'headroomPlanned'), 'length')} of free height would do, with room for hands.`
    : '';

export const cutCaution =
  'A cut joist, truss or rafter can bring the roof down: ask a structural engineer and the local code first. Old ceilings and insulation may hold asbestos or lead paint.';

/** A piece at a hatch with some height above it, where closed forms do not decide. */
export function heightPlanned(j: Judged, piece: string, print: Printer): Words {
  const name = wordsIn(j, 'name');
  const why =
    'A box that came up through a hole has to be tipped over while it is still in it; framing and roof leave it one way or none.';
  if (j.status === 'fails')
    return {
      what: `${name}: the ${piece} goes into the opening and does not get over under the roof. ${heightWords(j, print)}`.trim(),
      why: `Every way of tipping it square to the opening is ruled out by proof; twisting it out of square is not looked at. ${why}`,
      mend: `${openingWords(j, print)}${helpWords(j)}`.trim(),
      caution: cutCaution,
    };
  return {
    what: `${name}: the ${piece} comes up and lies down with ${print.value(j)} to spare. The way is drawn and was replayed against the framing.`,
    why,
    mend:
      j.status === 'tight'
        ? `Too little to count on. ${heightWords(j, print)}`
        : 'Try it with a frame of cardboard before you order.',
  };
}

/** A piece round a corner or up a flight, as motion planning found it. */
export function wayPlanned(j: Judged, piece: string, print: Printer): Words {
  const name = wordsIn(j, 'name');
  const why = 'Steps, soffit and corner are met one after the other, and nobody turns back halfway with it.';
  const tilted = numberIn(j, 'tilted') > 0 ? `, one end up by ${print.quantity(numberIn(j, 'tilted'), 'angle')}` : '';
  if (j.status === 'fails')
    return {
      what: `${name}: the ${piece} does not pass.`,
      why: `No way of turning it level, or up the flight square to it, is left: that is proved; twisting it is not looked at. ${why}`,
      mend: `Measure the narrowest place again.${helpWords(j)}`,
    };
  return {
    what: `${name}: the ${piece} passes with ${print.value(j)} to spare${tilted}.`,
    why,
    mend:
      j.status === 'tight'
        ? 'Too little to count on. Try it with a frame of cardboard.'
        : 'Try it with a frame of cardboard before you order.',
  };
}
