import type { LoadsResult } from '../../loads/result.ts';
import { required, unresolved } from '../../plan/outcome.ts';
import { type Found, telling } from '../../plan/telling.ts';
import type { PlanView } from '../../plan/trade.ts';
import { besideFindings } from './beside/findings.ts';
import type { Log, LogAnswers } from './result.ts';

/** Days with heat that a log needs. Source: `commissioning.log-days`. */
const daysLeast = 14;
/** More power for the same heat than the sheet says. Source: `commissioning.log-power`. */
const powerMost = 1.15;
/** A change is told where chance alone would show one as strong in fewer than one of twenty logs; smaller ones are no matter. */
const chanceMost = 0.05;
const changeMost = 0.05;

/** What each log says: whether it says enough, the house's loss, the unit's power, and whether something changed. */
export const logFindings = (logs: readonly Log[], view: PlanView): readonly Found[] =>
  logs.flatMap((log) => {
    const { learned } = log;
    const enough = learned.ok && !('weak' in learned.value.house) ? learned.value : undefined;
    return [
      readable(log),
      ...(enough ? [loss(log, enough, view.trades.loads)] : []),
      ...(enough?.power ? [power(log, enough)] : []),
      ...(enough?.change ? [change(log, enough)] : []),
      ...(learned.ok ? besideFindings(log, learned.value, view) : []),
    ];
  });

function readable({ id, name, learned }: Log): Found {
  const value = learned.ok ? learned.value : undefined;
  const faults = Object.entries(value?.faults ?? {}).map(([fault, f]) => ({ fault, ...f }));
  return telling('commissioning', `log-${id}`)(
    {
      id: `log-read:${id}`,
      holdPoint: 'season',
      consequence: 'money',
      kind: 'count',
      limit: { min: daysLeast },
      source: 'commissioning.log-days',
      facts: {
        name,
        rows: value?.rows ?? 0,
        left: faults.filter((f) => f.fault !== 'gap' && f.fault !== 'out-of-order').reduce((a, f) => a + f.count, 0),
        weak: value && 'weak' in value.house ? value.house.weak : '',
      },
    },
    (rec) => {
      const { days, house } = required(learned);
      const good = 'weak' in house ? Math.min(days, daysLeast - 1) : days;
      rec.step('days', 'table', {}, good, '', 'commissioning.log-fit');
      return good;
    },
  );
}

function loss({ id, name }: Log, { house, heatFrom, wind }: LogAnswers, loads: LoadsResult | undefined): Found {
  const planned = loads?.lossPerDegree;
  const most = planned?.ok ? planned.value.high : Number.POSITIVE_INFINITY;
  return telling('commissioning', `log-${id}`)(
    {
      id: `log-loss:${id}`,
      holdPoint: 'season',
      consequence: 'comfort',
      kind: 'conductance',
      limit: planned?.ok ? { max: most } : {},
      source: 'commissioning.log-fit',
      facts: {
        name,
        from: heatFrom ?? '',
        wind: wind ? 1 : 0,
        planned: planned?.ok ? planned.value.likely : 0,
        low: planned?.ok ? planned.value.low : 0,
      },
    },
    (rec) => {
      if (!planned) return unresolved('missing', 'house');
      required(planned);
      if ('weak' in house) return unresolved('missing', 'logs');
      const { low, likely, high } = house.lossPerDegree;
      rec.step('K', 'table', {}, likely, 'W/K', 'commissioning.log-fit');
      return { low, likely, high };
    },
  );
}

const power = ({ id, name }: Log, { power: ratio }: LogAnswers): Found =>
  telling('commissioning', `log-${id}`)(
    {
      id: `log-power:${id}`,
      holdPoint: 'season',
      consequence: 'money',
      kind: 'fraction',
      limit: { max: powerMost },
      source: 'commissioning.log-power',
      facts: { name },
    },
    (rec) => {
      if (!ratio) return unresolved('missing', 'logs');
      rec.step('share', 'table', {}, ratio.likely, '', 'commissioning.log-power');
      return { low: ratio.low, likely: ratio.likely, high: ratio.high };
    },
  );

function change({ id, name }: Log, { change: found }: LogAnswers): Found {
  const seen = found !== undefined && found.chance <= chanceMost;
  return telling('commissioning', `log-${id}`)(
    {
      id: `log-change:${id}`,
      holdPoint: 'season',
      consequence: 'money',
      kind: 'fraction',
      limit: { max: changeMost },
      source: 'commissioning.log-change',
      facts: {
        name,
        seen: seen ? 1 : 0,
        day: found?.day ?? 0,
        of: found?.of ?? '',
        chance: found?.chance ?? 1,
        share: found?.share ?? 0,
        low: found?.low ?? 0,
        high: found?.high ?? 0,
        dayFrom: found?.dayFrom ?? 0,
        dayTo: found?.dayTo ?? 0,
        least: found?.least ?? 0,
        by: found?.by ?? '',
      },
    },
    (rec) => {
      const share = seen ? found.share : 0;
      rec.step('change', 'table', {}, share, '', 'commissioning.log-change');
      // Where none is seen, one too small to be seen may still be there.
      return seen
        ? { low: found.low, likely: found.share, high: found.high }
        : { low: 0, likely: 0, high: found?.least ?? 0 };
    },
  );
}
