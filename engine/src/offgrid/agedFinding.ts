import { endShare, yearsTo } from '../coupling/power/helps/fade.ts';
import type { PowerHelps } from '../coupling/power/helps/helpsAnswers.ts';
import { required } from '../plan/outcome.ts';
import type { PlanView } from '../plan/trade.ts';
import { type Found, found } from './draftOf.ts';
import type { OffgridResult } from './result.ts';

/** What a new battery promises that an old one may not: limits of the findings that say so. */
type Promised = 'cold' | 'days' | 'generator';
type Broken = { readonly promise?: Promised; readonly share: number };

const limits = { cold: 24, generator: 500 } as const;

/** The share of its energy at which the first promise that holds with a new battery no longer does; the smallest share tried where none breaks. */
function breaksAt(helps: PowerHelps, days: number, wanted: number): Broken {
  const points = [{ share: 1, year: helps.base }, ...helps.aged];
  const crossing = (of: (p: (typeof points)[number]) => number, limit: number): number | undefined => {
    const at = points.findIndex((p) => of(p) > limit);
    const [before, after] = [points[at - 1], points[at]];
    if (!before || !after) return undefined;
    const part = (limit - of(before)) / (of(after) - of(before));
    return before.share + part * (after.share - before.share);
  };
  const least = points.at(-1)?.share ?? endShare;
  const all: Broken[] = (
    [
      ['cold', crossing((p) => p.year.cold, limits.cold)],
      ['generator', crossing((p) => p.year.generator, limits.generator)],
      ['days', days >= wanted && days > 0 && wanted / days > least ? wanted / days : undefined],
    ] as const
  ).flatMap(([promise, share]) => (share === undefined ? [] : [{ promise, share }]));
  return all.reduce<Broken>((a, b) => (b.share > a.share ? b : a), { share: least });
}

/** Promises that the battery does not keep even new, which ageing can break no more. */
function brokenNew({ base }: PowerHelps, days: number, wanted: number): Record<string, number> {
  return {
    ...(base.cold > limits.cold ? { coldNew: 1 } : {}),
    ...(base.generator > limits.generator ? { generatorNew: 1 } : {}),
    ...(days < wanted ? { daysNew: 1 } : {}),
  };
}

/** Years until an ageing battery breaks the first promise that it keeps new. */
export function agedFinding({ life, inputs }: OffgridResult, view: PlanView): Found {
  const source = 'offgrid.fade';
  const { power, powerHelps } = view.season;
  const wanted = inputs.ok && inputs.value.generator ? 2 : 3;
  const days = power.ok ? (power.value.darkDays[0]?.days ?? 0) : 0;
  const brokenIn = (helps: PowerHelps): Broken => breaksAt(helps, days, wanted);
  const broken = powerHelps.ok ? brokenIn(powerHelps.value) : undefined;
  const old = powerHelps.ok ? powerHelps.value.aged.find((a) => a.share === endShare) : undefined;
  const facts = {
    ...(powerHelps.ok && power.ok ? brokenNew(powerHelps.value, days, wanted) : {}),
    ...(broken ? { share: broken.share, promise: broken.promise ?? 'none' } : {}),
    ...(old && powerHelps.ok
      ? { generator: old.year.generator * 3600, litres: old.year.litres, newLitres: powerHelps.value.base.litres }
      : {}),
  };
  const of = { id: 'aged-battery', holdPoint: 'order', consequence: 'money', kind: 'count' } as const;
  return found({ ...of, limit: { min: 10 }, source, facts }, (recorder) => {
    const { cycles, years } = required(life);
    const n = required(power).cycles;
    const { share } = brokenIn(required(powerHelps));
    const at = (end: 'low' | 'likely' | 'high', together: boolean): number =>
      yearsTo(share, { cycles: cycles[end], years: years[end] }, n, together);
    const likely = at('likely', true);
    recorder.step('s', 'table', {}, share, '', source);
    recorder.step('n_year', 'table', {}, n, '', source);
    recorder.step('n', 'table', {}, cycles.likely, '', 'project');
    recorder.step('y', 'table', {}, years.likely, '', 'project');
    recorder.step(
      't',
      '(1 - s) / ((1 - e) * (1 / y + n_year / n))',
      { s: share, e: endShare, y: years.likely, n_year: n, n: cycles.likely },
      likely,
      '',
      source,
    );
    return { low: Math.min(likely, at('low', true)), likely, high: Math.max(likely, at('high', false)) };
  });
}
