import { wordsIn } from '../../../plan/facts.ts';
import { long, type Say } from '../say.ts';

export const sayMade: Readonly<Record<string, Say>> = {
  made: (j, print) => ({
    what: `${wordsIn(j, 'name')} is cut ${long(j, print, 'length')} long; its steepest side leans ${print.value(j)} of ${print.limit(j)} at most.`,
    why: 'A reducer that is too short costs pressure and whistles.',
    mend: j.status === 'ok' ? 'Nothing to do.' : `Make it ${long(j, print, 'lengthWanted')} long or more.`,
  }),
  'made-cut': (j) => ({
    what: `${wordsIn(j, 'name')} cannot be cut as entered.`,
    why:
      wordsIn(j, 'code') === 'larger-than-stock'
        ? 'It is larger than a sheet.'
        : 'One of its sizes, or what the seam takes, will not do.',
    mend:
      wordsIn(j, 'code') === 'larger-than-stock'
        ? 'Buy it, have it made, or take a larger sheet.'
        : 'Check the sizes of its ducts and the lap entered for sheet metal.',
  }),
};

export const aboutMade: Readonly<Record<string, string>> = { made: 'The shape of a reducer that is to be cut' };
