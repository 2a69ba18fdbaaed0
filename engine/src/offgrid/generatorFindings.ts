import { required, unresolved } from '../plan/outcome.ts';
import type { PlanView } from '../plan/trade.ts';
import { type Found, found } from './draftOf.ts';
import { helpOf } from './helpOf.ts';
import type { OffgridResult } from './result.ts';

/** What hangs on the generator, where there is one; how long the battery carries the house without sun in any case. */
export function generatorFindings({ inputs }: OffgridResult, view: PlanView): Found[] {
  const generator = inputs.ok ? inputs.value.generator : undefined;
  const days = darkDays(view, generator ? 2 : 3);
  return generator ? [runs(view, generator.fuel), lowLoad(view), withoutIt(view), days] : [days];
}

type Generator = NonNullable<Extract<PlanView['season']['power'], { ok: true }>['value']['generator']>;
const generatorOf = (view: PlanView): Generator =>
  required(view.season.power).generator ?? unresolved('missing', 'power.generator.power');

/** Hours in the year, and fuel. */
function runs(view: PlanView, fuel: string): Found {
  const source = 'offgrid.generator-hours';
  const year = view.season.power.ok ? view.season.power.value.generator : undefined;
  const of = { id: 'generator-hours', holdPoint: 'decide', consequence: 'money', kind: 'time' } as const;
  const lower = helpOf(view, 'cooler')?.generator;
  const boxed = helpOf(view, 'warm-box')?.generator;
  const facts = {
    ...(lower === undefined ? {} : { lower: lower * 3600 }),
    ...(boxed === undefined ? {} : { boxed: boxed * 3600 }),
    fuel,
    ...(year ? { litres: year.litres, starts: year.starts } : {}),
  };
  return found({ ...of, limit: { max: 500 * 3600 }, source, facts }, (recorder) => {
    const { hours } = generatorOf(view);
    recorder.step('h', 'table', {}, hours, 'h', source);
    recorder.step('t', 'h * 3600', { h: hours }, hours * 3600, 's', source);
    return hours * 3600;
  });
}

/** Share of its hours at too little load. */
function lowLoad(view: PlanView): Found {
  const source = 'offgrid.low-load';
  const of = { id: 'generator-load', holdPoint: 'season', consequence: 'damage', kind: 'fraction' } as const;
  return found({ ...of, limit: { max: 0.3 }, source }, (recorder) => {
    const { hours, lowHours } = generatorOf(view);
    recorder.step('h', 'table', {}, hours, 'h', source);
    recorder.step('h_low', 'table', {}, lowHours, 'h', source);
    const share = lowHours / Math.max(hours, 1);
    recorder.step('share', 'h_low / max(h, 1)', { h_low: lowHours, h: hours }, share, '', source);
    return share;
  });
}

/** Hours in which the house would be cold if it did not start. */
function withoutIt(view: PlanView): Found {
  const source = 'offgrid.without-generator';
  const alone = view.season.power.ok ? view.season.power.value.withoutGenerator : undefined;
  const of = { id: 'without-generator', holdPoint: 'decide', consequence: 'harm', kind: 'time' } as const;
  const facts = alone ? { ...alone } : {};
  return found({ ...of, limit: { max: 7 * 24 * 3600 }, source, facts }, (recorder) => {
    const { cold } = required(view.season.power).withoutGenerator ?? unresolved('missing', 'power.generator.power');
    recorder.step('h', 'table', {}, cold, 'h', source);
    recorder.step('t', 'h * 3600', { h: cold }, cold * 3600, 's', source);
    return cold * 3600;
  });
}

const day = 86_400;

/** How long a full battery carries the house on the coldest days of the year without any sun. */
function darkDays(view: PlanView, wanted: number): Found {
  const source = 'offgrid.dark-days';
  const year = view.season.power.ok ? view.season.power.value : undefined;
  const coldest = year?.darkDays[0];
  const mild = year?.darkDays.find((d) => d.outdoor === 5);
  const facts = {
    ...(year && coldest
      ? {
          outdoor: coldest.outdoor,
          daily: coldest.daily,
          spell: year.darkSpells.longest,
          survived: year.darkSpells.survived,
        }
      : {}),
    ...(mild ? { mild: mild.outdoor, mildDays: mild.days * day } : {}),
  };
  const of = { id: 'dark-days', holdPoint: 'decide', consequence: 'harm', kind: 'time' } as const;
  return found({ ...of, limit: { min: wanted * day }, source, facts }, (recorder) => {
    const { days } = required(view.season.power).darkDays[0] ?? unresolved('out-of-range', 'house.setpoints.heating');
    recorder.step('d', 'table', {}, days, 'days', 'power.handbook');
    recorder.step('t', 'd * 86400', { d: days }, days * day, 's', source);
    return days * day;
  });
}
