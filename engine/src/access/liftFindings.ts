import type { ResolvedProject } from '@kneewall/project';
import { required, unresolved } from '../plan/outcome.ts';
import type { Found } from '../plan/telling.ts';
import { entered } from '../plan/telling.ts';
import { answered, told } from './found.ts';
import { gravity } from './kernels/rope.ts';
import { gear, pullMost, quarter, strengthLeft } from './limits.ts';
import { ladder, outdoors, together, underUnit } from './moreFindings.ts';
import type { AccessResult } from './result.ts';

type Access = ResolvedProject['routes']['access'];

/** Who lifts what, what carries it, and how long people can work beside it. */
export function liftFindings(result: AccessResult, access: Access): Found[] {
  return [
    ...carried(result, access),
    ...(result.up === 'rope' ? roped(result, access) : [raised(result, access)]),
    ...ladder(result, access),
    ...together(result, access),
    ...outdoors(result, access),
    ...platform(result, access),
    ...underUnit(result, access),
    ...heat(result, access),
  ];
}

function carried({ carried: pieces, mayLift, people }: AccessResult, { lifting }: Access): Found[] {
  // What rolls is lifted by nobody; the caution stands beside the task.
  if ('choice' in lifting.by && lifting.by.choice === 'trolley') return [];
  const known = pieces.filter((p) => p.piece !== 'handler');
  return known.map(({ piece, mass }) =>
    told(
      {
        id: `carry:${piece}`,
        subject: 'lifting',
        holdPoint: 'lift',
        consequence: 'harm',
        kind: 'mass',
        limit: mayLift.ok ? { max: mayLift.value } : {},
        source: 'access.lifting',
        facts: {
          piece,
          ...(people.ok ? { people: people.value } : {}),
          ...('choice' in lifting.pose ? { pose: lifting.pose.choice } : {}),
        },
      },
      (rec) => {
        required(mayLift);
        const value = required(mass);
        rec.step('m', 'table', {}, value, 'kg', 'access.sheet');
        return 'missing' in lifting.people ? unresolved('missing', lifting.people.path) : value;
      },
    ),
  );
}

/** Up a ladder, a stair or by hand overhead: outside what the lifting equation covers, so nothing is claimed. */
const raised = ({ up, hoisted, steps }: AccessResult, { lifting }: Access): Found =>
  told(
    {
      id: 'raise',
      subject: 'lifting',
      holdPoint: 'lift',
      consequence: 'harm',
      kind: 'mass',
      limit: {},
      source: 'access.lifting',
      facts: {
        up,
        ...(hoisted.ok ? { mass: hoisted.value.mass } : {}),
        ...(steps.ok && steps.value.below !== undefined ? { below: steps.value.below } : {}),
      },
    },
    () => unresolved('out-of-range', 'choice' in lifting.up ? 'routes.access.lifting.up' : lifting.up.path),
  );

function roped({ hoisted }: AccessResult, { lifting }: Access): Found[] {
  const facts = hoisted.ok
    ? { mass: hoisted.value.mass, ...(hoisted.value.leans === undefined ? {} : { leans: hoisted.value.leans }) }
    : {};
  const of = { subject: 'lifting', holdPoint: 'lift', consequence: 'harm', kind: 'mass', facts } as const;
  const hung = hoisted.ok ? (gear * hoisted.value.anchor) / gravity : undefined;
  return [
    told({ ...of, id: 'rope-pull', limit: { max: pullMost / gravity }, source: 'access.pull' }, (rec) => {
      const { pull } = required(hoisted);
      if ('missing' in lifting.pulling) return unresolved('missing', lifting.pulling.path);
      const n = lifting.pulling.likely;
      if (!(n >= 1)) return unresolved('out-of-range', lifting.pulling.path);
      const each = (p: number): number => p / gravity / n;
      rec.step('each', 'pull / g / n', { pull: pull.likely, g: gravity, n }, each(pull.likely), 'kg', 'access.rope');
      return { low: each(pull.low), likely: each(pull.likely), high: each(pull.high) };
    }),
    told({ ...of, id: 'anchor', limit: hung === undefined ? {} : { min: hung }, source: 'access.gear' }, (rec) => {
      required(hoisted);
      return entered('m_break', lifting.anchor)(rec);
    }),
  ];
}

function platform({ platform: loaded }: AccessResult, access: Access): Found[] {
  const of = { subject: 'platform', holdPoint: 'order', consequence: 'harm' } as const;
  return [
    told(
      {
        ...of,
        id: 'joists',
        kind: 'fraction',
        limit: { max: 1 },
        marginWanted: strengthLeft,
        source: 'access.beam',
      },
      (rec) => {
        const { used } = required(loaded);
        rec.step('used', 'table', {}, used.likely, '', 'access.beam');
        return used;
      },
    ),
    told(
      {
        ...of,
        id: 'sag',
        consequence: 'damage',
        kind: 'length',
        limit: loaded.ok ? { max: loaded.value.span / 240 } : {},
        source: 'access.sag',
      },
      (rec) => {
        const { sag } = required(loaded);
        rec.step('sag', 'table', {}, sag.likely, 'm', 'access.beam');
        return sag;
      },
    ),
    answered({ ...of, id: 'deck', holdPoint: 'lift', source: 'access.deck' }, access.platform.deck, ['yes']),
  ];
}

/** Nothing in the cold season: what then counts is another matter. */
function heat({ heat: working }: AccessResult, access: Access): Found[] {
  if ('choice' in access.heat.time && access.heat.time.choice === 'cold') return [];
  return [
    told(
      {
        id: 'heat',
        subject: 'heat',
        holdPoint: 'lift',
        consequence: 'harm',
        kind: 'time',
        limit: { min: quarter },
        marginWanted: quarter,
        source: 'access.screening',
        facts: {
          ...('choice' in access.heat.time ? { time: access.heat.time.choice } : {}),
          ...(working.ok ? { attic: working.value.attic, index: working.value.index } : {}),
        },
      },
      (rec) => {
        const { minutes, index } = required(working);
        rec.step('WBGT', 'table', {}, index, '°C', 'access.wbgt');
        rec.step('time', 'minutes * 60', { minutes }, minutes * 60, 's', 'access.screening');
        return minutes * 60;
      },
    ),
  ];
}
