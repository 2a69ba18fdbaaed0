import type { Judged, Words } from '../../plan/judge.ts';
import type { Printer } from '../../plan/printer.ts';
import { readingName } from '../readingWords.ts';

/** Words for how many readings of the first start were repeated. */
export const repeatedWords = (j: Judged, print: Printer): Words => ({
  what: `Readings of the first start repeated in the same mode at “${String(j.facts?.name)}”: ${print.value(j)}; each season asks for ${print.limit(j)}.`,
  why: 'What creeps, a filter, a coil, a charge, shows only against the same number taken the same way.',
  mend:
    j.status === 'ok'
      ? 'Take the same ones again next season.'
      : 'Take static pressure, power and supply air again in the mode of the first start; a heating start is repeated when it is cold.',
});

/** Words for a number that moved, or did not, since the first start. */
export function sinceWords(j: Judged, print: Printer): Words {
  const { what, at, before, now } = j.facts ?? {};
  const name = readingName(String(what), String(at));
  const change = print.value(j);
  const still = j.status === 'ok';
  return {
    what: `${name}, “${String(now)}” against “${String(before)}”, each against what its state asks for: ${still ? 'moved by no more than' : 'moved by'} ${change}.`,
    why: 'Both readings are held against what the plan expects in their own weather, so that weather falls out, and with the same instrument its error too.',
    mend: still
      ? 'Nothing: write it down.'
      : j.status === 'tight'
        ? 'Read it again, three times: it may have moved, or only scattered.'
        : 'Look at what fits among the causes of that visit; filter and coil first.',
  };
}
