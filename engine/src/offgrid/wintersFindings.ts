import type { Winter } from '../coupling/winters/winterRows.ts';
import type { Winters } from '../coupling/winters/wintersAnswers.ts';
import { required } from '../plan/outcome.ts';
import type { PlanView } from '../plan/trade.ts';
import { type Found, found } from './draftOf.ts';
import type { OffgridResult } from './result.ts';

/** Hours without heat that a winter may have: a day with the generator, a week without it. Source: `offgrid.winters`. */
export const hoursMost = 24;
export const hoursAlone = 7 * 24;
/** Winters of twenty that may pass them: one in ten. */
const wintersMost = 2;

/** What many winters say that one cannot: how often it fails, and what one winter in ten asks. */
export function wintersFindings({ inputs }: OffgridResult, view: PlanView): Found[] {
  const generator = inputs.ok && inputs.value.generator !== undefined;
  const lead = inputs.ok && inputs.value.battery.chemistry === 'lead-acid';
  return [heat(view), ...(generator ? [alone(view), fuel(view)] : []), ...(lead ? [] : [mornings(view)])];
}

const known = ({ season: { winters } }: PlanView): Winters | undefined => (winters.ok ? winters.value : undefined);

const over = (all: Winters, column: keyof Winter, most: number): number =>
  all.winters.filter((w) => w[column] > most).length;

/** Median and one-in-ten of some columns, for the words. */
function tenths(all: Winters | undefined, names: readonly (keyof Winter)[]): Record<string, number> {
  if (!all) return {};
  const facts = names.flatMap((name) => [
    [name, all.tenths[name].median],
    [`${name}Tenth`, all.tenths[name].oneInTen],
  ]);
  return { of: all.winters.length, ...Object.fromEntries(facts) };
}

/** How many winters pass a number of hours without heat. */
function often(
  view: PlanView,
  id: string,
  column: keyof Winter,
  most: number,
  names: readonly (keyof Winter)[],
): Found {
  const source = 'offgrid.winters';
  const all = known(view);
  const facts = { most: most * 3600, ...tenths(all, [column, ...names]) };
  const of = { id, holdPoint: 'decide', consequence: 'harm', kind: 'count' } as const;
  return found({ ...of, limit: { max: wintersMost }, source, facts }, (recorder) => {
    const years = required(view.season.winters);
    const n = over(years, column, most);
    recorder.step('h_most', 'table', {}, most, 'h', source);
    recorder.step('n', 'table', {}, n, '', 'climate.winters');
    return n;
  });
}

const heat = (view: PlanView): Found =>
  often(view, 'winters-heat', 'cold', hoursMost, ['lowest', 'anyway', 'longestDark', 'survivedDark']);

const alone = (view: PlanView): Found =>
  often(view, 'winters-alone', 'aloneCold', hoursAlone, ['aloneLowest', 'stove', 'longestDark', 'survivedDark']);

/** Hours of the generator, and fuel, that one winter in ten reaches. */
function fuel(view: PlanView): Found {
  const source = 'offgrid.generator-hours';
  const facts = { ...tenths(known(view), ['generatorHours', 'litres']) };
  const of = { id: 'winters-fuel', holdPoint: 'decide', consequence: 'money', kind: 'time' } as const;
  return found({ ...of, limit: { max: 500 * 3600 }, source, facts }, (recorder) => {
    const { oneInTen } = required(view.season.winters).tenths.generatorHours;
    recorder.step('h', 'table', {}, oneInTen, 'h', 'climate.winters');
    recorder.step('t', 'h * 3600', { h: oneInTen }, oneInTen * 3600, 's', source);
    return oneInTen * 3600;
  });
}

/** Mornings too cold to charge that one winter in ten reaches. */
function mornings(view: PlanView): Found {
  const source = 'offgrid.cold-cells';
  const facts = { ...tenths(known(view), ['coldMornings']) };
  const of = { id: 'winters-mornings', holdPoint: 'order', consequence: 'damage', kind: 'count' } as const;
  return found({ ...of, limit: { max: 3 }, source, facts }, (recorder) => {
    const { oneInTen } = required(view.season.winters).tenths.coldMornings;
    recorder.step('mornings', 'table', {}, oneInTen, '', 'climate.winters');
    return oneInTen;
  });
}
