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

/** Why a household that follows the cold stays out of the plan. */
export const heatsWords =
  ' It rises with the cold: something in it heats, and cannot be told apart from the rest by this log. So it cannot be taken into the plan.';

type Say = (j: Judged, print: Printer) => Words;

export const besideWords: Readonly<Record<string, Say>> = {
  'log-household': (j, print) => ({
    what: `By the log “${String(j.facts?.name)}” the house beside the unit takes ${print.value(j)} a day; entered are ${print.rounded(Number(j.facts?.planned), 'energy')}, at most ${print.limit(j)}.${j.facts?.taken === 1 ? ' The plan goes by what was taken from a log.' : ''}`,
    why: `From ${String(j.facts?.days)} whole days. The range is for a whole year, so it is wider the less of a year was logged.${j.facts?.heats === 1 ? heatsWords : ''}`,
    mend:
      j.status === 'ok'
        ? 'The plan stands.'
        : j.facts?.heats === 1
          ? 'Find what heats beside the unit, and enter it apart.'
          : 'Take it into the plan: battery, generator and bills follow from it. Or find what runs all day.',
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
