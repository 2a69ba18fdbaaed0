import type { Judged, Words } from '../../plan/judge.ts';
import type { Printer } from '../../plan/printer.ts';
import { besideWords } from './beside/messages.ts';
import { logChange } from './changeWords.ts';
import type { HeatFrom, LogAnswers } from './result.ts';

/** Why a log says too little, and what would help. */
export const weakWords: Readonly<Record<Extract<LogAnswers['house'], { weak: unknown }>['weak'], string>> = {
  'no-columns':
    'it has not outdoor air, indoor air and heat (a heat meter, or supply and return air with a flow, or the unit’s power)',
  'few-days': 'fewer than 14 days in which the house was heated most hours are whole',
  'no-cold': 'it was hardly colder outdoors than in',
  'one-temperature': 'all days were about as cold as each other',
  'no-heat': 'hardly any heat was given',
  'no-tie': 'its heat does not follow the cold: look whether the right column was taken for heat, and what else heats',
  tangled: 'what it measured moved together all the time, so that nothing can be told apart',
};

export const heatFromWords: Readonly<Record<HeatFrom, string>> = {
  meter: 'Heat was metered.',
  air: 'Heat is air flow times how much the unit warmed it.',
  sheet:
    'Heat was not measured: it is the unit’s power times what its sheet gives for it. A house that loses more and a unit that gives less look the same here.',
};

type Say = (j: Judged, print: Printer) => Words;

/** Words for what logs say, by the part of the id before the colon. */
export const logWords: Readonly<Record<string, Say>> = {
  'log-read': (j) => ({
    what:
      j.facts?.weak === ''
        ? `The log “${String(j.facts?.name)}” has ${String(j.value.ok ? j.value.value : 0)} days that can be used; ${String(j.facts?.left)} of its ${String(j.facts?.rows)} rows have something wrong.`
        : `The log “${String(j.facts?.name)}” says too little: ${weakWords[j.facts?.weak as keyof typeof weakWords]}.`,
    why: 'A few days alike fit any house.',
    mend:
      j.status === 'ok'
        ? 'Keep logging: mild and hard weeks together say most.'
        : 'Log on through colder and milder weeks. A night that is let cool says much.',
  }),
  'log-loss': (j, print) => ({
    what: `By the log “${String(j.facts?.name)}” the house loses ${print.value(j)} for each degree; planned were ${print.quantity(Number(j.facts?.planned), 'conductance')}, at most ${print.limit(j)}.`,
    why: `${heatFromWords[(j.facts?.from || 'sheet') as HeatFrom]}${j.facts?.wind === 1 ? '' : ' Wind was not logged, so the range is wide.'}`,
    mend:
      j.status === 'fails'
        ? 'Look for draughts and leaking ducts first, then at the insulation that was entered; a blower door says which. Correct what is wrong in the plan, and it is worked out again.'
        : j.status === 'tight'
          ? 'The log leaves room for more loss than was planned: log on through colder weeks, with wind, before the plan is trusted or changed.'
          : 'The plan stands. Where the log lies well below it, look which wall or draught was entered too badly.',
  }),
  'log-power': (j, print) => ({
    what: `By the log “${String(j.facts?.name)}” the unit draws ${print.value(j)} of what its sheet says for the same heat.`,
    why: 'Frost, dirt, wrong charge and leaking ducts all show as more power for the same heat. Power between loads of a day is rounded away.',
    mend:
      j.status === 'fails'
        ? 'Filter and coil first, then static pressure, then the charge by somebody licensed for it.'
        : 'Compare again next season.',
    ...(j.status === 'fails' ? { caution: 'Work on the refrigerant circuit needs a licence nearly everywhere.' } : {}),
  }),
  'log-change': logChange,
  ...besideWords,
};

export const logAbout: Readonly<Record<string, string>> = {
  'log-read': 'What this log says is not known.',
  'log-loss': 'The log’s loss cannot be held against the plan.',
  'log-power': 'What the unit draws is not known.',
  'log-change': 'Whether something changed is not known.',
  'log-household': 'What the house takes beside the unit cannot be held against the plan.',
  'log-idle': 'What goes to nothing at night cannot be held against the plan.',
};
