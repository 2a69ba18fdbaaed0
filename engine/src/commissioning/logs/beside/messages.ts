import type { Judged, Words } from '../../../plan/judge.ts';
import type { Printer } from '../../../plan/printer.ts';
import type { LogBeside, Untold } from './result.ts';

const columnWords = { housePower: 'whole house', battery: 'battery' } as const;

const whyWords: Readonly<Record<Untold, string>> = {
  'no-unit':
    'without the unit’s own power, and summer days beside winter ones, it cannot be told from the unit. Log the unit as well',
  'few-days': 'fewer than 21 days are whole, and one week is not like another',
  'net-meter':
    'it falls below nothing, so it counts what comes and goes at the grid, sun included. What the house takes is behind that',
  'no-house': 'nothing says what its power went into. Log the power of the whole house beside it',
  'no-sun': 'nothing says when there was sun to charge it. Log the panels’ power beside it',
  'never-alone': 'there are fewer than 100 hours without sun in which it alone carried the house',
  'no-tie': 'at night what it gave did not follow what the house took, or the house took about the same all night',
};

/** Why a column teaches nothing, in a sentence. */
export const untoldWords = ({ column, why }: LogBeside['untold'][number]): string =>
  `The column of the ${columnWords[column as keyof typeof columnWords] ?? column} teaches nothing here: ${whyWords[why]}.`;

type Say = (j: Judged, print: Printer) => Words;

export const besideWords: Readonly<Record<string, Say>> = {
  'log-household': (j, print) => ({
    what: `By the log “${String(j.facts?.name)}” the house beside the unit takes ${print.value(j)} a day; planned are ${print.rounded(Number(j.facts?.planned), 'energy')}, at most ${print.limit(j)}.`,
    why: `From ${String(j.facts?.days)} whole days of the season that was logged: summer and winter may differ. What else heats by electricity is in it.`,
    mend:
      j.status === 'ok'
        ? 'The plan stands.'
        : 'Enter what was measured, and its hours: battery, generator and bills follow from it. Or find what runs all day.',
  }),
  'log-idle': (j, print) => ({
    what: `By the log “${String(j.facts?.name)}” ${print.value(j)} go to nothing while the battery alone carries the house; planned for the inverter are ${print.rounded(Number(j.facts?.planned), 'electric-power')}.`,
    why: `From ${String(j.facts?.hours)} hours without sun: what leaves the battery at no load, on a straight line; each W used takes ${Number(j.facts?.each).toFixed(2)} W out of it. What is wired before the house’s meter is in it.`,
    mend:
      j.status === 'ok'
        ? 'The plan stands.'
        : 'Look what else hangs on the battery: a charger, a router, a second inverter left on, a search mode that is off. Else enter what was measured.',
  }),
};
