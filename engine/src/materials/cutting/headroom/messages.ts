import { wordsIn } from '../../../plan/facts.ts';
import { long, type Say } from '../say.ts';

export const sayHeadroom: Readonly<Record<string, Say>> = {
  headroom: (j, print) => ({
    what: `The top of “${wordsIn(j, 'name')}” comes ${print.value(j)} above what the unit stands on, its board counted; ${print.limit(j)} is clear there.`,
    why: 'A box that does not go under the rafters is cut twice, and one without a hand’s breadth over it cannot be stapled and taped on top.',
    mend:
      j.status === 'ok'
        ? 'Nothing to do.'
        : j.facts?.lowTo === undefined
          ? 'Set it lower before its opening, tape its top before it goes in, or stand the unit where the roof is higher.'
          : `Make it ${long(j, print, 'lowTo')} high and ${long(j, print, 'wideTo')} wide inside: the same area. Or set it lower, or stand the unit where the roof is higher.`,
  }),
  stands: (j, print) => ({
    what:
      j.status === 'ok'
        ? `“${wordsIn(j, 'name')}” ends ${print.value(j)} above what the unit stands on.`
        : `“${wordsIn(j, 'name')}” reaches ${long(j, print, 'down')} below what the unit stands on.`,
    why: 'A box in line with a low unit is often higher than the unit is: it then meets the platform or the joists.',
    mend:
      j.status === 'ok'
        ? 'Hang it or prop it: the unit does not carry it.'
        : `Let it lie ${long(j, print, 'down')} higher than the opening’s middle, end the platform before it, or raise the unit.`,
  }),
};

export const aboutHeadroom: Readonly<Record<string, string>> = {
  headroom: 'Whether a box has room under the roof',
};
