import type { Draft } from '../plan/judge.ts';
import { attempt, required, unresolved } from '../plan/outcome.ts';
import { scenario } from '../plan/scenario.ts';
import { draftsOf, type Found, telling } from '../plan/telling.ts';
import type { Drafts, PlanView } from '../plan/trade.ts';
import type { WorkingRecorder } from '../plan/working.ts';
import { anchorShare } from './anchors.ts';
import { chargeFree, chargeMost, releaseHeights } from './kernels/roomRule.ts';
import { refrigerantOf } from './refrigerants.ts';
import type { LinesetResult } from './result.ts';
import { routeFindings } from './routeFindings.ts';
import { soundFindings } from './soundFindings.ts';

const told = telling('lineset', 'lineset');

/** What stands against the line set and the place of the outdoor unit. */
export function findings(result: LinesetResult, view: PlanView): Drafts {
  const found = [
    reach(result),
    ...limits(result, view),
    ...rise(view),
    ...place(result, view),
    ...anchor(result, view),
    ...routeFindings(result, view),
    ...soundFindings(result, view),
    ...roomRule(result, view),
  ];
  return draftsOf(found);
}

/** m that the shortest set which reaches has to spare; where none reaches, what the longest lacks, below 0. */
function reach({ needed, stock, set }: LinesetResult): Found {
  const longest = stock.at(-1);
  const shorter = needed.ok ? stock.findLast((s) => s.length < needed.value.likely - 1e-9) : undefined;
  return told(
    {
      id: 'reach',
      holdPoint: 'order',
      consequence: 'money',
      kind: 'length',
      limit: { min: 0 },
      source: 'lineset.way',
      facts: {
        ...(needed.ok ? { needed: needed.value.likely, most: needed.value.high } : {}),
        ...(set.ok ? { set: set.value.length } : longest ? { set: longest.length } : {}),
        ...(shorter && needed.ok ? { shorter: shorter.length, short: needed.value.likely - shorter.length } : {}),
      },
    },
    (rec) => {
      const length = (set.ok ? set.value : longest)?.length ?? unresolved('missing', 'routes.lineset.stock');
      const needs = required(needed).likely;
      rec.step('spare', 'L_set - L', { L_set: length, L: needs }, length - needs, 'm', 'lineset.way');
      return length - needs;
    },
  );
}

/** The bought length against what the unit allows. */
function limits({ set }: LinesetResult, { project, trades }: PlanView): Found[] {
  const limitsOf = () => candidate(project, trades).lineLimits;
  const length = (rec: WorkingRecorder): number => {
    const { length } = required(set);
    rec.step('L_set', 'table', {}, length, 'm', 'lineset.limits');
    return length;
  };
  const at = (id: 'length-most' | 'length-least', limit: Draft['limit'] | undefined): Found =>
    told(
      { id, holdPoint: 'order', consequence: 'damage', kind: 'length', limit: limit ?? {}, source: 'lineset.limits' },
      (rec) => {
        if (limit === undefined) return unresolved('missing', ...limitPath(project, trades, id));
        return length(rec);
      },
    );
  const known = attempt(limitsOf);
  const s = scenario();
  const most = known.ok ? s.maybe(known.value.lengthMost) : undefined;
  const least = known.ok ? s.maybe(known.value.lengthLeast) : undefined;
  return [
    at('length-most', most === undefined ? undefined : { max: most }),
    at('length-least', least === undefined ? undefined : { min: least }),
  ];
}

type Project = PlanView['project'];
type Trades = PlanView['trades'];

function candidate({ candidates }: Project, { equipment }: Trades): Project['candidates'][string] {
  const id = required(equipment?.chosen ?? { ok: false, because: 'missing', paths: ['candidates'] });
  return candidates[id] ?? unresolved('missing', `candidates.${id}`);
}

function limitPath(project: Project, trades: Trades, id: 'length-most' | 'length-least'): string[] {
  const found = attempt(() => candidate(project, trades).lineLimits);
  if (!found.ok) return ['candidates'];
  const field = id === 'length-most' ? found.value.lengthMost : found.value.lengthLeast;
  return 'missing' in field ? [field.path] : [];
}

/** Only where the height between the units is entered. */
function rise({ project, trades }: PlanView): Found[] {
  const { rise: height } = project.routes.lineset;
  if ('missing' in height) return [];
  const most = attempt(() => scenario().of(candidate(project, trades).lineLimits.riseMost));
  return [
    told(
      {
        id: 'rise',
        holdPoint: 'order',
        consequence: 'damage',
        kind: 'length',
        limit: most.ok ? { max: most.value } : {},
        source: 'lineset.limits',
      },
      (rec) => {
        required(most);
        rec.given('h', height);
        return height.likely;
      },
    ),
  ];
}

/** The spot itself: nothing covered, clearances kept, above the snow. Only where one is meant. */
function place({ spot, baseLeast }: LinesetResult, { project }: PlanView): Found[] {
  const { place: meant } = project.routes.lineset;
  if (meant.wall === undefined) return [];
  return [
    told(
      {
        id: 'place',
        holdPoint: 'order',
        consequence: 'money',
        kind: 'count',
        limit: { min: 1 },
        source: 'lineset.clear',
        ...(spot.ok ? { facts: { fits: spot.value.fits } } : {}),
      },
      (rec) => {
        const holds = required(spot).fits === 'yes' ? 1 : 0;
        rec.step('holds', 'table', {}, holds, '', 'lineset.clear');
        return holds;
      },
    ),
    told(
      {
        id: 'snow',
        holdPoint: 'order',
        consequence: 'damage',
        kind: 'length',
        limit: baseLeast.ok ? { min: baseLeast.value } : {},
        source: 'lineset.snow',
      },
      (rec) => {
        required(baseLeast);
        if ('missing' in meant.z) return unresolved('missing', meant.z.path);
        rec.given('z', meant.z);
        return meant.z.likely;
      },
    ),
  ];
}

/** What the anchors of a bracket have to hold. Only where the unit hangs on a wall. */
function anchor({ boltPull, workings }: LinesetResult, { project }: PlanView): Found[] {
  const { place: meant, hold } = project.routes.lineset;
  if (meant.wall === undefined) return [];
  const holds = attempt(() => scenario().of(hold.anchor) * anchorShare);
  return [
    {
      draft: {
        id: 'anchor',
        subject: 'lineset',
        holdPoint: 'lift',
        consequence: 'harm',
        kind: 'mass',
        value: attempt(() => {
          required(holds);
          return required(boltPull);
        }),
        limit: holds.ok ? { max: holds.value } : {},
        source: 'lineset.anchor',
        working: 'lineset/anchor',
      },
      working: workings['lineset/anchor'] ?? [],
    },
  ];
}

/** The whole charge against the floor that the ducts serve; only for a refrigerant that burns. */
function roomRule({ charge, flammable }: LinesetResult, view: PlanView): Found[] {
  const { project } = view;
  if (flammable === undefined) return notNamed(view);
  const free = chargeFree(flammable);
  const area = attempt(() => {
    const s = scenario();
    const rooms = Object.values(project.house.rooms);
    if (rooms.length === 0) return unresolved('missing', 'house.rooms');
    return rooms.reduce((sum, room) => sum + s.of(room.floorArea), 0);
  });
  const most = area.ok ? Math.max(free, chargeMost(flammable, area.value, releaseHeights.ceiling)) : free;
  return [
    told(
      {
        id: 'room-rule',
        holdPoint: 'decide',
        consequence: 'harm',
        kind: 'mass',
        limit: { max: most },
        source: 'lineset.room-rule',
        facts: { free, ...(area.ok ? { area: area.value } : {}) },
      },
      (rec) => {
        const mass = required(charge);
        rec.step('m', 'table', {}, mass, 'kg', 'lineset.charge');
        return mass;
      },
    ),
  ];
}

/** A refrigerant that no list knows, or none named: nobody can say whether it burns. */
function notNamed({ project, trades }: PlanView): Found[] {
  const chosen = trades.equipment?.chosen;
  if (!chosen?.ok || refrigerantOf(project.candidates[chosen.value]?.refrigerant ?? '') === 'none') return [];
  const named = project.candidates[chosen.value]?.refrigerant !== undefined;
  return [
    told(
      {
        id: 'room-rule',
        holdPoint: 'decide',
        consequence: 'harm',
        kind: 'mass',
        limit: {},
        source: 'lineset.room-rule',
      },
      () => unresolved(named ? 'out-of-range' : 'missing', `candidates.${chosen.value}.refrigerant`),
    ),
  ];
}
