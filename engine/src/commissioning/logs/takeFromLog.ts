import type { Interval } from '../../physics/fitting/index.ts';
import type { LogAnswers } from './result.ts';

/** What can be taken from a log into the plan. */
export const takings = ['loss', 'power', 'household'] as const;
export type Taking = (typeof takings)[number];

/** A change to the document; nothing in the place of `after` takes back. */
export type LogChange = { readonly path: readonly string[]; readonly after: unknown };

const dayLength = 86_400_000;
const day = (since1970: number): string => new Date(since1970 * dayLength).toISOString().slice(0, 10);

/** Where it is written. `unit` is the id of the chosen candidate. */
export const placeOfTaking = (taking: Taking, unit: string | undefined): readonly string[] =>
  ({
    loss: ['house', 'learned'],
    power: ['candidates', unit ?? '', 'learned'],
    household: ['power', 'household', 'learned'],
  })[taking];

/** Digits that a document keeps of what was learned: more than any log knows. */
const digits = 4;
const entered = ({ low, likely, high }: Interval) => {
  const round = (x: number): number => Number(x.toPrecision(digits));
  return { value: { low: round(low), likely: round(likely), high: round(high) }, known: 'measured' as const };
};

/**
 * The change that takes one learned value into the plan, with its range and where it comes from; undefined where the log
 * does not tell it. `accepted` is the day, as `2028-05-01`; `name` that of the log.
 */
export function takeFromLog(
  taking: Taking,
  found: LogAnswers,
  from: { readonly name: string; readonly unit: string | undefined; readonly accepted: string },
): LogChange | undefined {
  const origin = { log: from.name, from: day(found.from), to: day(found.to), accepted: from.accepted };
  const path = placeOfTaking(taking, from.unit);
  if (taking === 'power')
    return found.power && from.unit !== undefined
      ? { path, after: { ...origin, power: entered(found.power) } }
      : undefined;
  if (taking === 'household') {
    const household = found.beside?.household;
    if (!household || household.heats) return undefined;
    return { path, after: { ...origin, daily: entered(household.daily), hours: household.hours.map(Math.round) } };
  }
  const { house } = found;
  if ('weak' in house || !house.times) return undefined;
  return { path, after: { ...origin, loss: entered(house.times), lossPerDegree: entered(house.lossPerDegree) } };
}
