import type { Judged, Words } from '../plan/judge.ts';
import type { Printer } from '../plan/printer.ts';
import type { LicensedWork } from './result.ts';
import { workTitle } from './scopeWords.ts';

const dangers: Readonly<Record<LicensedWork, string>> = {
  refrigerant:
    'Refrigerant stands under high pressure, freezes skin, may burn, and in many places only certified people may open it.',
  electrical:
    'Electricity kills, and a poor joint burns the house years later; many places let only a licensed electrician connect.',
  gas: 'Gas and flue gas kill sleeping people: leave pipes, burners and flues to licensed people, and have detectors.',
  startUp: 'A first start with a valve shut, air in the lines or a swapped wire ruins a compressor within minutes.',
};
const cautions: Readonly<Record<LicensedWork, string>> = {
  refrigerant:
    'Never open a line or valve of a charged system on your own account. A licensed person recovers, evacuates and charges.',
  electrical: 'Isolate, lock off, wait, prove dead. Local code and the inspector stand above this plan.',
  gas: 'Smell of gas: no switch, no flame, out, and call from outside.',
  startUp: 'Run it only when every hold point before the start is settled.',
};

/** Who does a kind of work, and what the papers of the law say of that. */
export function sayWork(j: Judged, _print: Printer): Words {
  const work = String(j.facts?.work ?? 'electrical') as LicensedWork;
  const [hands, wanted, free, silent] = ['hands', 'wanted', 'free', 'silent']
    .map((key) => j.facts?.[key])
    .map((x) => String(x ?? ''));
  const title = workTitle[work];
  const words = { why: dangers[work], caution: cautions[work] };
  if (hands === '')
    return {
      ...words,
      what: `${title}: nobody has said who does it.`,
      mend: `Ask who may, then choose under Who does what.${wanted ? ` A licensed person is asked for by: ${wanted}.` : ''}`,
    };
  if (hands === 'licensed')
    return {
      ...words,
      what: `${title}: by a licensed person.`,
      mend: 'Agree the day, what you prepare, and that you get a report.',
    };
  if (j.status === 'fails')
    return {
      ...words,
      what: `${title}: you plan to do it yourselves, and a licensed person is asked for by: ${wanted}.`,
      mend: 'Give it to a licensed person. You may still prepare: ways, supports, holes, conduit, as the office allows.',
    };
  if (j.status === 'ok')
    return {
      ...words,
      what: `${title}: by yourselves, which is free by what you entered${free ? ` (${free})` : ''}.`,
      mend: 'Have it in writing, and have the work looked at before it is covered or switched on.',
    };
  return {
    ...words,
    what: `${title}: you plan to do it yourselves, and whether you may is not known.`,
    mend: `Ask before you decide: ${silent || 'the local office'}. Enter the answer with that paper, under Licensed work.`,
  };
}
