import { numberIn } from '../../plan/facts.ts';
import type { Judged } from '../../plan/judge.ts';
import type { Printer } from '../../plan/printer.ts';
import { nothingToDo as done, name, type Say } from '../say.ts';
import type { Space } from './asked.ts';
import { spaceWords, takeOne, type WayOut, wayOutWords } from './wayOutWords.ts';

function givesWay(j: Judged, print: Printer): string {
  const ways = (j.facts?.ways ?? []) as readonly WayOut[];
  return [takeOne(ways.length), ...ways.map((w) => wayOutWords(w, print))].join(' ');
}

const spaceIn = (j: Judged, print: Printer): string => {
  const [space = {}] = (j.facts?.space ?? []) as readonly Space[];
  return spaceWords(name(j), space, print);
};

const goals: Readonly<Record<string, string>> = { labour: 'the least work', static: 'the least pressure' };

const spots: Readonly<Record<string, string>> = { bay: 'the bay it lies in', over: 'the way over the joists' };

/** Words for the choice of stocked sizes, and for what a duct has to pass. */
export const saySizes: Readonly<Record<string, Say>> = {
  sizes: (j, print) => ({
    what: `To bring every room the air it asks for, ${print.quantity(numberIn(j, 'flow'), 'flow')} in all, ${numberIn(j, 'generous') === 1 ? 'even the largest sizes that go in' : 'the ducts as drawn'} need ${print.value(j)}; the blower has ${print.limit(j)} for them.`,
    why: 'Sizes belong together: one duct made larger shifts the air of all others. Ducts that are cut and hung are dear to change.',
    mend:
      numberIn(j, 'fits') === 0
        ? `No choice of stocked sizes is enough. ${givesWay(j, print)}`
        : numberIn(j, 'changed') === 0
          ? done
          : `The air page has the stocked sizes that do it for ${goals[String(j.facts?.goal)] ?? 'the least money'}: ${numberIn(j, 'changed') === 1 ? `“${name(j)}” changes` : `${numberIn(j, 'changed')} ducts change, “${name(j)}” among them`}.`,
  }),
  'no-size': (j, print) => ({
    what:
      numberIn(j, 'sizes') === 0
        ? `Every kind of duct is ruled out for “${name(j)}”, or none of its sizes is listed.`
        : `No stocked size takes ${print.quantity(numberIn(j, 'flow'), 'flow')} through ${spaceIn(j, print)}, within the speed that stays quiet.`,
    why: 'A duct squeezed into its space, or too small for its air, is found out with the ceiling already open.',
    mend:
      numberIn(j, 'sizes') === 0
        ? 'Say what it may be made of, at the duct or for all ducts; or list the sizes with stock or prices.'
        : givesWay(j, print),
  }),
  space: (j, print) => ({
    what: `“${name(j)}” as drawn is ${print.value(j)} ${j.facts?.side === 'width' ? 'wide' : 'high'} with its insulation; ${spots[String(j.facts?.passes)] ?? 'its space'} has ${print.limit(j)}.`,
    why: 'Insulation that is squeezed flat does not insulate, and the jacket sweats there.',
    mend:
      j.status === 'ok'
        ? done
        : numberIn(j, 'bought') === 1
          ? 'It is bought: lead it another way, or take it back. Joists, rafters and studs are cut only as the local code allows.'
          : 'The sizes on the air page keep within the space. Joists, rafters and studs are cut only as the local code allows.',
  }),
};
