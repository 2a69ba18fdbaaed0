import type { LoadsResult } from '../../loads/result.ts';
import { required, unresolved } from '../../plan/outcome.ts';
import { type Found, telling } from '../../plan/telling.ts';
import type { PlanView } from '../../plan/trade.ts';
import { besideFindings } from './beside/findings.ts';
import type { Log, LogAnswers } from './result.ts';

/** Days with heat that a log needs. Source: `commissioning.log-days`. */
const daysLeast = 14;
/** More power for the same heat than the plan expects. Source: `commissioning.log-power`. */
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

/** The log's loss against the plan's own, by one measure: the same fit to the same days in the same weather. */
function loss({ id, name }: Log, { house, heatFrom, wind }: LogAnswers, loads: LoadsResult | undefined): Found {
  const own = loads?.learned?.own.lossPerDegree ?? loads?.lossPerDegree;
  const night = own?.ok ? own.value : undefined;
  const planned = 'weak' in house ? undefined : house.planned;
  // What is not known of the plan's house is as wide in the log's weather as on the cold night.
  const most = night && planned !== undefined ? (planned * night.high) / night.likely : undefined;
  return telling('commissioning', `log-${id}`)(
    {
      id: `log-loss:${id}`,
      holdPoint: 'season',
      consequence: 'comfort',
      kind: 'conductance',
      limit: most === undefined ? {} : { max: most },
      source: 'commissioning.log-fit',
      facts: {
        name,
        from: heatFrom ?? '',
        wind: wind ? 1 : 0,
        planned: planned ?? 0,
        times: 'weak' in house ? 0 : (house.times?.likely ?? 0),
        night: night?.likely ?? 0,
        taken: loads?.learned ? 1 : 0,
      },
    },
    (rec) => {
      if ('weak' in house) return unresolved('missing', 'logs');
      if (!night || planned === undefined) return unresolved('missing', 'house');
      const { low, likely, high } = house.lossPerDegree;
      rec.step('K_night', 'table', {}, night.likely, 'W/K', 'loads.transmission');
      rec.step('K_plan', 'table', {}, planned, 'W/K', 'commissioning.log-plan');
      rec.step(
        'f',
        'K_log / K_plan',
        { K_log: likely, K_plan: planned },
        likely / planned,
        '',
        'commissioning.log-plan',
      );
      rec.step('K_log', 'table', {}, likely, 'W/K', 'commissioning.log-fit');
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
      rec.step('share', 'table', {}, ratio.likely, '', 'commissioning.log-unit');
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
