import type { ResolvedProject } from '@kneewall/project';
import { required, unresolved } from '../plan/outcome.ts';
import { entered, type Found } from '../plan/telling.ts';
import { told } from './found.ts';
import { gravity } from './kernels/rope.ts';
import { gear, pullMost, quarter, strengthLeft } from './limits.ts';
import type { AccessResult } from './result.ts';

type Access = ResolvedProject['routes']['access'];

/** People below whom it is refused. Source: `access.alone`. */
const peopleLeast = 2;
/** Share of the shaking that may come through. Source: `access.mount`. */
const throughMost = 0.3;

/** What must not be done by one alone: hoisting, ladders, ramps, and any work in an attic's heat. */
export function together({ chosen, people, up, outdoorUp }: AccessResult, { lifting, heat }: Access): Found[] {
  const summer = 'choice' in heat.time && heat.time.choice !== 'cold';
  const risky = [
    ...(up === 'rope' ? ['hoisting'] : up === 'stair' ? ['carrying it up a stair'] : ['bringing it up by hand']),
    ...(outdoorUp === 'ramp' || outdoorUp === 'rope' ? ['raising the outdoor unit'] : []),
    ...(summer ? ['working in the heat of the attic'] : []),
  ];
  return [
    told(
      {
        id: 'alone',
        subject: 'lifting',
        holdPoint: 'lift',
        consequence: 'harm',
        kind: 'count',
        limit: { min: peopleLeast },
        source: 'access.alone',
        facts: { risky: risky.join(', ') },
      },
      (rec) => {
        required(chosen);
        required(people);
        return entered('n', lifting.people)(rec);
      },
    ),
  ];
}

/** A ladder carries person, tools and load together. Only where the unit is to go up one. */
export function ladder({ up, steps }: AccessResult, { lifting }: Access): Found[] {
  if (up !== 'ladder') return [];
  return [
    told(
      {
        id: 'ladder',
        subject: 'lifting',
        holdPoint: 'lift',
        consequence: 'harm',
        kind: 'mass',
        limit: 'missing' in lifting.ladder ? {} : { max: lifting.ladder.likely },
        source: 'access.ladder',
      },
      (rec) => {
        if ('missing' in lifting.ladder) return unresolved('missing', lifting.ladder.path);
        const { ladder: mass } = required(steps);
        if (mass === undefined) return unresolved('missing', 'candidates');
        rec.step('m', 'table', {}, mass, 'kg', 'access.ladder');
        return mass;
      },
    ),
  ];
}

/** The outdoor unit up a ramp or straight up, by rope: who pulls, and what the anchor holds. */
export function outdoors({ raised, outdoorUp }: AccessResult, { outdoor }: Access): Found[] {
  if (outdoorUp !== 'ramp' && outdoorUp !== 'rope') return [];
  const facts = raised.ok
    ? { up: outdoorUp, mass: raised.value.mass, slope: raised.value.slope, back: raised.value.back.high / gravity }
    : { up: outdoorUp };
  const of = { subject: 'outdoor', holdPoint: 'lift', consequence: 'harm', kind: 'mass', facts } as const;
  const hung = raised.ok ? (gear * raised.value.anchor) / gravity : undefined;
  return [
    told({ ...of, id: 'outdoor-pull', limit: { max: pullMost / gravity }, source: 'access.pull' }, (rec) => {
      const { pull } = required(raised);
      if ('missing' in outdoor.pulling) return unresolved('missing', outdoor.pulling.path);
      const n = outdoor.pulling.likely;
      if (!(n >= 1)) return unresolved('out-of-range', outdoor.pulling.path);
      const each = (p: number): number => p / gravity / n;
      rec.step('each', 'pull / g / n', { pull: pull.likely, g: gravity, n }, each(pull.likely), 'kg', 'access.ramp');
      return { low: each(pull.low), likely: each(pull.likely), high: each(pull.high) };
    }),
    told(
      { ...of, id: 'outdoor-anchor', limit: hung === undefined ? {} : { min: hung }, source: 'access.gear' },
      (rec) => {
        required(raised);
        return entered('m_break', outdoor.anchor)(rec);
      },
    ),
  ];
}

/** Timbers across the joists, and what is between the unit and the wood; only where there are any. */
export function underUnit({ platform, mounted }: AccessResult, access: Access): Found[] {
  const of = { subject: 'platform', holdPoint: 'order' } as const;
  const { cross, isolation } = access.platform;
  const across: Found[] =
    'choice' in cross && cross.choice !== 'none'
      ? [
          told(
            {
              ...of,
              id: 'across',
              consequence: 'harm',
              kind: 'fraction',
              limit: { max: 1 },
              marginWanted: strengthLeft,
              source: 'access.beam',
            },
            (rec) => {
              const { across: used } = required(platform);
              if (!used) return unresolved('missing', 'routes.access.platform.cross');
              rec.step('used', 'table', {}, used.likely, '', 'access.beam');
              return used;
            },
          ),
        ]
      : [];
  const mounts: Found[] =
    'choice' in isolation && isolation.choice !== 'none'
      ? [
          told(
            {
              ...of,
              id: 'mounts',
              consequence: 'comfort',
              kind: 'fraction',
              limit: { max: throughMost },
              source: 'access.mount',
              facts: mounted.ok ? { own: mounted.value.own } : {},
            },
            (rec) => {
              const { through } = required(mounted);
              rec.step('through', 'table', {}, through.likely, '', 'access.mount');
              return through;
            },
          ),
        ]
      : [];
  return [...across, ...mounts];
}

/** Each planned window by the hours of its month; until the house's year is known one line says so for all of them. */
export function planned({ heatHours }: AccessResult, windows: ResolvedProject['work']['windows']): Found[] {
  const ids = Object.keys(windows).sort();
  return (heatHours.ok ? ids : ids.slice(0, 1)).map((id) => {
    const found = heatHours.ok ? heatHours.value.planned.find((p) => p.id === id)?.of : undefined;
    const facts = found?.ok
      ? {
          day: found.value.day,
          from: found.value.from,
          until: found.value.until,
          work: found.value.work,
          drink: found.value.drink,
          best: found.value.best,
          bestWork: found.value.bestWork,
        }
      : {};
    return told(
      {
        id: `heat-window:${id}`,
        subject: id,
        item: id,
        holdPoint: 'lift',
        consequence: 'harm',
        kind: 'time',
        limit: { min: quarter },
        marginWanted: quarter,
        source: 'access.hours',
        facts,
      },
      (rec) => {
        required(heatHours);
        if (!found) return unresolved('missing', `work.windows.${id}`);
        const minutes = required(found).leastMinutes;
        rec.step('time', 'minutes * 60', { minutes }, minutes * 60, 's', 'access.screening');
        return minutes * 60;
      },
    );
  });
}
