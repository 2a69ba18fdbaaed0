import type { Judged, Words } from '../plan/judge.ts';
import type { Printer } from '../plan/printer.ts';
import { unknownWords } from '../plan/unknownWords.ts';

export function words(j: Judged, print: Printer): Words {
  if (j.status === 'unknown')
    return unknownWords(
      j,
      print,
      j.id === 'cold-night-doubt'
        ? 'How well the coldest normal night is known cannot be told yet.'
        : 'Whether the cold night fits the months is not known yet.',
    );
  const value = print.value(j);
  if (j.id === 'cold-night-doubt')
    return {
      what: `You gave the coldest normal night to within ${value}.`,
      why: 'Every degree colder asks for about three per cent more heat.',
      mend:
        j.status === 'ok'
          ? 'Nothing to do.'
          : 'Ask the building office for the winter design temperature of the place, or look at last winter’s lowest nights, and enter it.',
    };
  const near = (j.margin ?? 0) >= 0;
  return {
    what: `The cold night you gave lies ${value} below the coldest month’s mean.`,
    why: 'The heating is sized for that night. A record low buys too large a unit, a mild guess freezes pipes.',
    mend: near
      ? 'Nothing to do: the two agree.'
      : 'Check the unit of the temperature and whether it is a record. Leave records out: take what comes on a few nights of an ordinary winter.',
  };
}
