import { required } from '../plan/outcome.ts';
import { entered, type Found } from '../plan/telling.ts';
import { answered, told } from './found.ts';
import { hasSecondLine } from './lifts.ts';
import type { CondensateResult, Drain } from './result.ts';

/** m that the second outlet lies above the first at the least, so that it stays dry. Source: `condensate.second-above`. */
const aboveLeast = 0.006;
/** Times the unit's own water that a pump has to lift. Source: `condensate.pump-spare`. */
const pumpTimes = 2;

/** The second outlet or the pan: how high it lies, how its line falls, and whether anybody sees it run. */
export function secondFindings({ secondLine }: CondensateResult, drain: Drain): Found[] {
  if (!hasSecondLine(drain)) return [];
  const overflow = 'choice' in drain.second && drain.second.choice === 'overflow';
  const of = drain.secondLine;
  const which = overflow ? 'outlet' : 'pan';
  const above = told(
    {
      id: 'second-above',
      holdPoint: 'connect',
      consequence: 'damage',
      kind: 'length',
      limit: { min: aboveLeast },
      source: 'condensate.second-above',
    },
    entered('h', of.above),
  );
  return [
    ...(overflow ? [above] : []),
    told(
      {
        id: 'second-fall',
        holdPoint: 'cut',
        consequence: 'damage',
        kind: 'length',
        limit: secondLine.ok ? { min: secondLine.value.least } : {},
        source: 'condensate.slope',
        facts: { which },
      },
      (rec) => {
        required(secondLine);
        return entered('h_fall', of.fall)(rec);
      },
    ),
    answered(
      {
        id: 'second-ends',
        holdPoint: 'connect',
        consequence: 'damage',
        kind: 'count',
        limit: { min: 1 },
        source: 'condensate.second',
        facts: { which },
      },
      of.ends,
      ['seen'],
    ),
  ];
}

/** Where a pump lifts the water: whether it can, whether it lifts enough, and what happens when it fails. */
export function pumpFindings({ pumped, water }: CondensateResult, { pump }: Drain): Found[] {
  if (!pumped) return [];
  const of = { holdPoint: 'order', consequence: 'damage' } as const;
  const needed = water.ok ? (pumpTimes * water.value.high) / 1000 : undefined;
  return [
    told(
      {
        ...of,
        id: 'pump',
        kind: 'volume',
        limit: needed === undefined ? {} : { min: needed },
        source: 'condensate.pump-spare',
        facts: pumped.ok ? { lift: pumped.value.lift, headMost: pumped.value.headMost, power: pumped.value.power } : {},
      },
      (rec) => {
        required(water);
        const { litres } = required(pumped);
        rec.step('V', 'litres / 1000', { litres }, litres / 1000, 'm³', 'condensate.pump');
        return litres / 1000;
      },
    ),
    answered(
      {
        ...of,
        id: 'pump-fails',
        holdPoint: 'connect',
        kind: 'count',
        limit: { min: 1 },
        source: 'condensate.pump-stops',
      },
      pump.alarm,
      ['stops'],
    ),
  ];
}
