import { wordsIn } from '../../../plan/facts.ts';
import type { Judged } from '../../../plan/judge.ts';
import type { Printer } from '../../../plan/printer.ts';
import { long, type Say } from '../say.ts';

const openingOf = (j: Judged): string => `the unit’s ${wordsIn(j, 'side')} opening`;

/** Both ends of a piece in words. */
function between(j: Judged, print: Printer): string {
  const to =
    j.facts?.diameter === undefined
      ? `${long(j, print, 'toWidth')} by ${long(j, print, 'toHeight')}`
      : `${long(j, print, 'diameter')} round`;
  return `from ${openingOf(j)}, ${long(j, print, 'width')} by ${long(j, print, 'height')}, to “${wordsIn(j, 'name')}”, ${to}`;
}

const share = (j: Judged): string =>
  j.facts?.share === undefined ? '' : `, ${Math.round(Number(j.facts.share) * 10) / 10} % of it`;

/** Several ducts on one side: the box that is cut for them. */
const sharedWords = (j: Judged, print: Printer) => ({
  what: `${wordsIn(j, 'ducts')} ducts join ${openingOf(j)}: “${wordsIn(j, 'name')}”. They leave it by a box of ${wordsIn(j, 'of') === 'board' ? 'board' : 'sheet metal'} on that opening, ${long(j, print, 'width')} by ${long(j, print, 'height')} inside and ${long(j, print, 'length')} long, closed at its far end, with a hole for each.`,
  why: 'An opening takes one duct. What is not drawn is guessed in the attic, and the box’s leaks and heat are not in the plan’s sums as long as it is no duct of its own.',
  mend: 'Measure the opening before the first cut. To have the box counted too, enter it as a duct at the unit and let the others join it.',
});

export const sayJoint: Readonly<Record<string, Say>> = {
  joint: (j, print) => {
    if (wordsIn(j, 'state') === 'shared') return sharedWords(j, print);
    return wordsIn(j, 'state') === 'straight'
      ? {
          what: `“${wordsIn(j, 'name')}” is as large as ${openingOf(j)} and lies in line with it: they join straight, no piece goes between.`,
          why: 'Every piece less is a joint less that leaks.',
          mend: 'Measure the opening on the unit itself before the first cut.',
        }
      : {
          what: `A piece of ${wordsIn(j, 'of') === 'board' ? 'board' : 'sheet metal'}, ${long(j, print, 'length')} long, goes ${between(j, print)}. Its steepest side leans ${print.value(j)}; ${print.limit(j)} is the most where it ${wordsIn(j, 'way') === 'widening' ? 'widens' : 'narrows'} along the air.`,
          why: 'Air lets go of a wall that leans away too fast: pressure is lost, and the first take-offs get too little. Within these slopes the piece takes little; what it takes is in the plan’s pressures.',
          mend:
            j.status === 'ok'
              ? 'Measure the opening on the unit itself before the first cut.'
              : `Make it ${long(j, print, 'lengthWanted')} long or more, bring the duct in line, or make it nearer to the opening’s size.`,
        };
  },
  'joint-loss': (j, print) => ({
    what: `The piece from ${openingOf(j)} to “${wordsIn(j, 'name')}” takes ${print.value(j)} of the blower’s pressure${share(j)}; ${print.limit(j)} is what one piece may take.`,
    why: 'The blower has to give it all day, and the rooms lack the air.',
    mend:
      j.status === 'ok'
        ? 'Nothing to do.'
        : j.facts?.longer === undefined
          ? 'Its sizes are too far apart, or it leads too far aside: make the duct nearer to the opening’s size, or bring it in line.'
          : `Make it ${long(j, print, 'longer')} long instead of ${long(j, print, 'length')}: it then takes ${print.quantity(Number(j.facts.thenTakes), 'pressure')}. Or bring the duct in line with the opening.`,
  }),
  'joint-cut': (j) => ({
    what: `The piece between ${openingOf(j)} and “${wordsIn(j, 'name')}” cannot be cut as entered.`,
    why:
      wordsIn(j, 'code') === 'larger-than-stock'
        ? 'It is larger than a sheet, even in parts.'
        : 'One of its sizes or its board’s thickness will not do.',
    mend:
      wordsIn(j, 'code') === 'larger-than-stock'
        ? 'Make it shorter, take a larger sheet, or have it made.'
        : 'Check its sizes and the thickness entered for it.',
  }),
};

/** What a joint that is not known says: the opening is to be measured. */
export const unknownJoint = (j: Judged): { readonly what: string; readonly why: string } => ({
  what: `${openingOf(j).replace('the', 'The')} is not entered, so no piece between it and “${wordsIn(j, 'name')}” is drawn.`,
  why: 'Take it from the drawing in the data sheet, or measure it inside its flange, before the first cut: a box that does not meet the unit is made twice.',
});
