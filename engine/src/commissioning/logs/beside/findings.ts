import { unresolved } from '../../../plan/outcome.ts';
import { type Found, telling } from '../../../plan/telling.ts';
import type { PlanView } from '../../../plan/trade.ts';
import type { Log, LogAnswers } from '../result.ts';

/** Over what the plan's likely idle draw may be where it was entered as one number. Source: `commissioning.log-idle`. */
const idleSpare = 1.25;

/** The household beside the unit and the inverter's own draw, against what the plan has for them. */
export const besideFindings = (log: Log, { beside }: LogAnswers, { project }: PlanView): readonly Found[] => [
  ...(beside?.household ? [household(log, beside.household, project.power.household)] : []),
  ...(beside?.inverter ? [idle(log, beside.inverter, project.power.inverter.idle)] : []),
];

type Beside = NonNullable<LogAnswers['beside']>;
type Power = PlanView['project']['power'];
type Field = Power['inverter']['idle'];

const household = (
  { id, name }: Log,
  found: NonNullable<Beside['household']>,
  { daily: planned, learned }: Power['household'],
): Found =>
  telling('commissioning', `log-${id}`)(
    {
      id: `log-household:${id}`,
      holdPoint: 'season',
      consequence: 'money',
      kind: 'energy',
      limit: 'missing' in planned ? {} : { max: planned.high },
      source: 'commissioning.log-beside',
      facts: {
        ...{ name, days: found.days, heats: found.heats ? 1 : 0, taken: 'missing' in learned.daily ? 0 : 1 },
        planned: 'missing' in planned ? 0 : planned.likely,
      },
    },
    (rec) => {
      if ('missing' in planned) return unresolved('missing', planned.path);
      rec.step('E_rest', 'table', {}, found.daily.likely, 'kWh', 'commissioning.log-beside');
      return found.daily;
    },
  );

const idle = ({ id, name }: Log, found: NonNullable<Beside['inverter']>, planned: Field): Found =>
  telling('commissioning', `log-${id}`)(
    {
      id: `log-idle:${id}`,
      holdPoint: 'season',
      consequence: 'money',
      kind: 'electric-power',
      limit: 'missing' in planned ? {} : { max: Math.max(planned.high, idleSpare * planned.likely) },
      source: 'commissioning.log-idle',
      facts: {
        name,
        hours: found.hours,
        each: found.each.likely,
        planned: 'missing' in planned ? 0 : planned.likely,
      },
    },
    (rec) => {
      if ('missing' in planned) return unresolved('missing', planned.path);
      rec.step('P_idle', 'table', {}, found.idle.likely, 'W', 'commissioning.log-idle');
      return found.idle;
    },
  );
