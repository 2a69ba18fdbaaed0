import type { Judged, Words } from '../plan/judge.ts';
import type { Printer } from '../plan/printer.ts';
import { unitOf } from '../plan/unit.ts';
import { unknownWords } from '../plan/unknownWords.ts';
import { balanceWords } from './balancing/balanceWords.ts';
import { causeWords } from './causes/causeWords.ts';
import type { FaultKind } from './causes/faults.ts';
import { logAbout, logWords } from './logs/messages.ts';
import { powerWords } from './powerWords.ts';
import { readingName } from './readingWords.ts';
import { repeatedWords, sinceWords } from './seasons/sinceWords.ts';
import { heatingTestWords } from './startUp/startUpWords.ts';

type Say = (j: Judged, print: Printer) => Words;

const aside: Readonly<Record<string, string>> = {
  young: 'the unit had run steadily for less than 15 minutes',
  defrost: 'it had just defrosted',
};

type SuspectFact = {
  readonly causes: readonly { readonly kind: FaultKind; readonly at: string }[];
  readonly chance: number;
};
type NextFact = {
  readonly id: string;
  readonly at: string;
  readonly gain: number;
  readonly minutes: number;
  readonly times: number;
};
const suspectsOf = (j: Judged): readonly SuspectFact[] =>
  (j.facts?.suspects ?? []) as unknown as readonly SuspectFact[];
const nextOf = (j: Judged): NextFact | undefined => ((j.facts?.next ?? []) as unknown as readonly NextFact[])[0];

const suspectWords = ({ causes }: SuspectFact): string =>
  causes.map(({ kind, at }) => causeWords[kind].what(at)).join(', and ');

/** What to read next, in a sentence; nothing where no reading would settle anything. */
function nextWords(j: Judged): string {
  const next = nextOf(j);
  if (!next || next.gain < 0.05) return '';
  const times = next.times > 1 ? `, ${next.times} times` : '';
  return ` Tells most for its minutes: ${readingName(next.id, next.at)}${times} (${next.minutes} min).`;
}

function causes(j: Judged, print: Printer): Words {
  const [first, ...others] = suspectsOf(j);
  const chance = (s: SuspectFact) => print.rounded(s.chance, 'fraction');
  const listed = others.filter((s) => s.chance >= 0.05).map((s) => `${suspectWords(s)} (${chance(s)})`);
  const fault = first?.causes.find((c) => c.kind !== 'none');
  const { caution, mend } = fault ? causeWords[fault.kind] : causeWords.none;
  return {
    what: first
      ? `What was read at “${String(j.facts?.name)}” fits best: ${suspectWords(first)} (${chance(first)})${listed.length > 0 ? `; then ${listed.join('; ')}` : ''}.`
      : 'No cause was weighed.',
    why: 'Several faults show in one number; only readings of different kinds tell them apart. Chances before reading are invented, and one kind of reading alone never makes more than 80 %.',
    mend: `${mend}${nextWords(j)}`,
    ...(caution ? { caution } : {}),
  };
}

function reading(j: Judged, print: Printer): Words {
  const facts = j.facts ?? {};
  const name = readingName(String(facts.what), String(facts.at));
  const read = print.quantity(Number(facts.net), j.kind);
  const should = print.quantity(Number(facts.should ?? 0), j.kind);
  const share = facts.share === 1 ? ' As its share of all registers, their sum from the blower’s table.' : '';
  const good = j.status === 'ok' || j.status === 'tight';
  return {
    what: `${name}: ${read}, ${good ? 'good' : 'off'}. In that state ${should} is expected.${share}`,
    why: 'A reading is judged by what its method can tell: good where nine in ten such readings lie inside, off where hardly one in twelve does.',
    mend: good ? 'Write it down for next season.' : 'Look at what fits among the causes before anything is changed.',
  };
}

function notTold(j: Judged, print: Printer): Words {
  const facts = j.facts ?? {};
  const name = readingName(String(facts.what), String(facts.at));
  const read = print.quantity(Number(facts.net), j.kind);
  const should = print.quantity(Number(facts.should ?? 0), j.kind);
  const why = 'A number that means nothing is not counted, for or against.';
  switch (facts.aside) {
    case 'unit':
      return {
        what: `${name}: ${print.inUnit(Number(facts.net), j.kind, unitOf(j.kind))} was taken down, ${should} is expected: it would fit in ${String(facts.because)}.`,
        why,
        mend: 'Enter it again with its unit written behind it, or read it again if it was right.',
      };
    case 'contradicts':
      return {
        what: `${name}: ${read} cannot be true beside another reading of the same visit.`,
        why: 'Neither is believed more than the other, so neither is counted.',
        mend: 'Read both once more, one right after the other, and take the wrong one out.',
      };
    case 'unknown':
      return {
        what: `${name}: the plan expects no such number in that state.${facts.shut === 1 ? ' With the doors shut only rooms and the pressure across the air handler are held against it.' : ''}`,
        why,
        mend: 'Choose what it belongs to, or leave it as a note.',
      };
    default:
      return {
        what: `${name}: ${read} beside ${should}: cannot tell.`,
        why: `The method is rougher than what is left of the band it is held against.${j.kind === 'flow' ? ' A bag convicts, it hardly ever acquits.' : ''}`,
        mend:
          facts.way === 'again'
            ? `Read it ${String(facts.times)} times in all, the same way.`
            : j.kind === 'flow'
              ? 'More of the same will not help: take static pressure and the blower’s table, or read all registers nine times and use their shares.'
              : 'It lies at the edge of its band, where more of the same will not help: let readings of another kind decide.',
      };
  }
}

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
        : 'Nothing is lost: read again after 15 minutes at one speed.',
  }),
  causes,
  reading,
  power: powerWords,
  balance: balanceWords,
  'heating-test': heatingTestWords,
  repeated: repeatedWords,
  'since-first': sinceWords,
  ...logWords,
};

const about: Readonly<Record<string, string>> = {
  'first-start': 'Nothing that was read has been entered yet.',
  conditions: 'The state in which readings were taken is not known.',
  loose: 'Some readings belong to no visit, or to no number that is expected: they are held against nothing.',
  causes: 'Which causes fit is not known yet.',
  'heating-test': 'Whether heating can be proved at the first start is not known.',
  ...logAbout,
};

/** Words for a finding of the readings. */
export function words(j: Judged, print: Printer): Words {
  const key = j.id.split(':')[0] ?? j.id;
  if (j.status === 'unknown' && key === 'reading') return notTold(j, print);
  if (j.status === 'unknown' && key !== 'power' && key !== 'balance')
    return unknownWords(j, print, about[key] ?? 'Not known yet.');
  const own = say[key];
  if (!own) throw new Error(`assert: no words for ${j.id}`);
  return own(j, print);
}
