import { wordsIn } from '../../plan/facts.ts';
import type { Judged } from '../../plan/judge.ts';
import { aboutHeadroom, sayHeadroom } from './headroom/messages.ts';
import { sayJoint } from './joint/messages.ts';
import { aboutMade, sayMade } from './made/messages.ts';
import type { Say } from './say.ts';

const done = 'Nothing to do.';
const onSheets = 'The cut sheets show every line to cut, with its measure from one edge.';

const formNames: Readonly<Record<string, string>> = {
  one: 'one piece, folded round',
  l: 'two pieces, each an L',
  u: 'two pieces, a U and a lid',
  four: 'four pieces',
};

/** What is wrong with a box, in one sentence, and what would mend it. */
function wrong(j: Judged): { readonly what: string; readonly mend: string } {
  const name = `“${wordsIn(j, 'name')}”`;
  const hole = wordsIn(j, 'hole');
  switch (wordsIn(j, 'code')) {
    case 'larger-than-stock': {
      const way = formNames[wordsIn(j, 'wayOut')];
      return {
        what: `${name} is larger than a sheet of board in the form that is asked for.`,
        mend: way
          ? `Make it of ${way}: that fits. Or choose a larger sheet.`
          : 'Make the box narrower or lower, or take a larger sheet: no form of it fits.',
      };
    }
    case 'out-of-table':
      return {
        what: `The board of ${name} has a thickness that no folding table covers.`,
        mend: 'Enter 1, 1 1/2 or 2 in (25.4, 38.1 or 50.8 mm).',
      };
    case 'overlaps':
      return {
        what: `Two holes of ${name} run into each other, one of them for “${hole}”.`,
        mend: 'Move one of them, or send it to another side.',
      };
    case 'outside-panel':
      return {
        what: `The hole for “${hole}” does not lie wholly within its side of ${name}, or it crosses a joint.`,
        mend: 'Move it, send it to another side, or make the box longer or higher.',
      };
    case '':
      return {
        what: `${name} has no room for ${wordsIn(j, 'unplaced')}: 2 in are wanted between holes and to edges.`,
        mend: 'Make the box longer, send a duct to the top or the far end, or enter its place yourself.',
      };
    default:
      return { what: `${name} cannot be laid out: one of its sizes will not do.`, mend: 'Check its sizes.' };
  }
}

export const sayCutting: Readonly<Record<string, Say>> = {
  ...sayJoint,
  ...sayHeadroom,
  ...sayMade,
  pieces: () => ({ what: 'The pieces can be cut as entered.', why: onSheets, mend: done }),
  box: (j) => ({
    what:
      j.status === 'ok'
        ? `“${wordsIn(j, 'name')}” is ready to cut: ${formNames[wordsIn(j, 'form')] ?? 'laid out'}.`
        : wrong(j).what,
    why: 'Board that is cut wrong is thrown away, and a box in the attic cannot be made larger.',
    mend: j.status === 'ok' ? onSheets : wrong(j).mend,
  }),
  metal: (j) =>
    ['larger-than-stock', 'does-not-fit', 'not-positive'].includes(wordsIn(j, 'code'))
      ? {
          what: `“${wordsIn(j, 'name')}” cannot be wrapped from one sheet of metal.`,
          why: 'Its girth with the lap is more than the sheet’s longer side.',
          mend: 'Have it made, choose a larger sheet, or make the duct smaller.',
        }
      : {
          what: wrong(j).what,
          why: 'A hole cut in the wrong place of a duct stays a leak.',
          mend: wrong(j).mend,
        },
  passes: (j, print) => ({
    what: `“${wordsIn(j, 'name')}” measures ${print.value(j)} outside where “${wordsIn(j, 'way')}” leaves ${print.limit(j)}.`,
    why: 'Outside is the inside and twice the board. A box that does not pass is folded a second time, or cut apart.',
    mend:
      j.status === 'ok'
        ? 'It can be made up below and carried up end first.'
        : 'Carry the grooved pieces up flat or half folded, and close the box in the attic.',
  }),
  'near-unit': (j) => ({
    what: `“${wordsIn(j, 'name')}” has take-offs nearer than 18 in to the unit: ${wordsIn(j, 'which')}.`,
    why: 'Air leaves the blower in a jet; take-offs in it get too little or too much.',
    mend: 'Make the box longer, or send one of them to another side or the far end.',
  }),
  'board-pressure': (j, print) => ({
    what: `Ducts of board have ${print.value(j)} to hold; ${print.limit(j)} is the limit of the standard for houses.`,
    why: 'Beyond it tape and staples let go at the folds.',
    mend: j.status === 'ok' ? done : 'Bring the static pressure down first: larger ducts, filter and return.',
  }),
  'board-side': (j, print) => ({
    what: `The widest side of board is ${print.value(j)}, of “${wordsIn(j, 'name')}”; ${print.limit(j)} needs no reinforcement.`,
    why: 'A wider side breathes with the blower and opens its seams.',
    mend: j.status === 'ok' ? done : 'Make the box narrower, or brace it as the maker of the board says.',
  }),
  sheets: (j, print) => {
    const sheets = wordsIn(j, 'sheets');
    const hand = Number(wordsIn(j, 'hand'));
    const beside = hand === 0 ? '' : ` beside ${hand} that you have`;
    const noun = `${sheets} ${sheets === '1' ? 'sheet' : 'sheets'} of ${wordsIn(j, 'of') === 'metal' ? 'sheet metal' : 'duct board'}${beside}`;
    const kept = Number(wordsIn(j, 'kept'));
    const rest =
      kept === 0
        ? ''
        : kept === 1
          ? ' 1 piece of what is left is worth keeping.'
          : ` ${kept} pieces of what is left are worth keeping.`;
    return {
      what:
        j.status === 'ok'
          ? `${noun}: no way of cutting needs fewer.${rest}`
          : `${noun}; it is not proved that ${print.value(j)} fewer would not do.${rest}`,
      why: 'Board is dear to ship, and a sheet short stops the work.',
      mend:
        j.status === 'ok'
          ? 'Cut in the order on the sheets: each cut goes right through.'
          : 'Good to cut from all the same.',
    };
  },
  spliced: (j) => ({
    what:
      j.status === 'ok'
        ? `Flexible duct is spliced in ${wordsIn(j, 'count')} ${wordsIn(j, 'count') === '1' ? 'place' : 'places'}: ${wordsIn(j, 'which')}, longer than a bag.`
        : `More splices in one run than may be: ${wordsIn(j, 'over')}.`,
    why: 'A splice is one more joint that can leak, and has to lie where it can be reached.',
    mend:
      j.status === 'ok'
        ? 'Join over a metal sleeve, inner core strapped and sealed first; or buy a longer bag.'
        : 'Buy a longer bag, or go the first part of the way in round metal duct.',
  }),
};

export const aboutCutting: Readonly<Record<string, string>> = {
  ...aboutHeadroom,
  ...aboutMade,
  pieces: 'Whether all pieces can be cut',
  'joint-loss': 'What the piece at the unit takes of the pressure',
  'board-pressure': 'The pressure on ducts of board',
  sheets: 'How many sheets it takes',
};
