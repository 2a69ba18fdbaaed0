import type { Judged, Words } from '../plan/judge.ts';
import type { Printer } from '../plan/printer.ts';
import { unknownWords } from '../plan/unknownWords.ts';
import { logAbout, logWords } from './logs/messages.ts';

type Say = (j: Judged, print: Printer) => Words;

const aside: Readonly<Record<string, string>> = {
  young: 'the unit had run steadily for less than 15 minutes',
  defrost: 'it had just defrosted',
  doors: 'doors between the rooms were shut',
};

const say: Readonly<Record<string, Say>> = {
  'first-start': (j, print) => ({
    what: `${print.value(j)} readings were taken at one visit; a first start asks for ${print.limit(j)} at least.`,
    why: 'What was not read when all was new cannot be compared with later.',
    mend:
      j.status === 'ok'
        ? 'Repeat three of them each season, in the same state.'
        : 'Static pressure first, then power, supply and return air, then flows.',
  }),
  conditions: (j) => ({
    what:
      j.status === 'ok'
        ? `The state at “${String(j.facts?.name)}” is known and steady.`
        : `The readings of “${String(j.facts?.name)}” are set aside: ${aside[String(j.facts?.aside)] ?? 'the state did not suit them'}.`,
    why: 'A unit that starts, defrosts or blows into shut rooms is another machine for a while.',
    mend:
      j.status === 'ok'
        ? 'Take all readings of an hour in one state.'
        : 'Nothing is lost: read again after 15 minutes at one speed, doors open.',
  }),
  ...logWords,
};

const about: Readonly<Record<string, string>> = {
  'first-start': 'Nothing that was read has been entered yet.',
  conditions: 'The state in which readings were taken is not known.',
  ...logAbout,
};

/** Words for a finding of the readings. */
export function words(j: Judged, print: Printer): Words {
  const key = j.id.split(':')[0] ?? j.id;
  if (j.status === 'unknown') return unknownWords(j, print, about[key] ?? 'Not known yet.');
  const own = say[key];
  if (!own) throw new Error(`assert: no words for ${j.id}`);
  return own(j, print);
}
