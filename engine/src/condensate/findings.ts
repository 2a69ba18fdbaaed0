import { attempt, required, unresolved } from '../plan/outcome.ts';
import { scenario } from '../plan/scenario.ts';
import { draftsOf, entered, type Found } from '../plan/telling.ts';
import type { Drafts, PlanView } from '../plan/trade.ts';
import { answered, told } from './found.ts';
import { pumpFindings, secondFindings } from './lineFindings.ts';
import type { CondensateResult, Drain, Frost } from './result.ts';
import { muggy, risers, stretchFalls, ventTop } from './wayFindings.ts';

/** m: the least inner diameter of a drain. Source: `condensate.pipe`. */
export const diameterLeast = 0.01905;
/** m: the least depth of a pan under the unit, and how much larger than the unit it has to be. Source: `condensate.pan`. */
export const panDepthLeast = 0.038;
export const panBeyond = 0.076;

/** What stands against the drain. */
export function findings(result: CondensateResult, view: PlanView): Drafts {
  const { drain } = view.project.routes;
  const hasPan = 'choice' in drain.second && drain.second.choice === 'pan';
  const found = [
    trapRoom(result, drain),
    vent(drain),
    ...ventTop(drain),
    fall(result, drain),
    ...stretchFalls(result, drain),
    ...risers(result, drain),
    pipeSize(result, drain),
    ...pipeFilled(result),
    ...muggy(result, view.agreement),
    second(drain),
    ...secondFindings(result, drain),
    ...pumpFindings(result, drain),
    ...(hasPan ? [panDepth(result, drain), panLarger(view)] : []),
    ...freezes(result, drain),
    ends(drain),
  ];
  return draftsOf(found);
}

function trapRoom({ room, trap, pressure, pulls }: CondensateResult, drain: Drain): Found {
  const source = pulls ? 'condensate.trap' : 'condensate.trap-pressed';
  return told(
    {
      id: 'trap-room',
      holdPoint: 'cut',
      consequence: 'damage',
      kind: 'length',
      limit: room.ok ? { min: room.value } : {},
      source,
      facts: {
        pulls: pulls ? 1 : 0,
        ...(trap.ok ? { drop: trap.value.drop, seal: trap.value.seal } : {}),
        ...(pressure.ok ? { pressure: pressure.value.high } : {}),
      },
    },
    (rec) => {
      required(room);
      return entered('h_free', drain.below)(rec);
    },
  );
}

const vent = (drain: Drain): Found =>
  answered(
    {
      id: 'vent',
      holdPoint: 'cut',
      consequence: 'damage',
      kind: 'count',
      limit: { min: 1 },
      source: 'condensate.vent',
    },
    drain.vent,
    ['after'],
  );

const second = (drain: Drain): Found =>
  answered(
    {
      id: 'second',
      holdPoint: 'order',
      consequence: 'damage',
      kind: 'count',
      limit: { min: 1 },
      source: 'condensate.second',
    },
    drain.second,
    ['pan', 'overflow', 'switch'],
  );

const ends = (drain: Drain): Found =>
  answered(
    {
      id: 'ends',
      holdPoint: 'connect',
      consequence: 'harm',
      kind: 'count',
      limit: { min: 1 },
      source: 'condensate.ends',
    },
    drain.ends,
    ['ground', 'gap'],
  );

const fall = ({ fallLeast, along }: CondensateResult, drain: Drain): Found =>
  told(
    {
      id: 'fall',
      holdPoint: 'cut',
      consequence: 'damage',
      kind: 'length',
      limit: fallLeast.ok ? { min: fallLeast.value } : {},
      source: 'condensate.slope',
    },
    (rec) => {
      required(fallLeast);
      if (Object.keys(drain.stretches).length === 0) return entered('h_fall', drain.fall)(rec);
      const { fall } = required(along);
      rec.step('h_fall', 'table', {}, fall, 'm', 'project');
      return fall;
    },
  );

const pipeSize = ({ water }: CondensateResult, drain: Drain): Found =>
  told(
    {
      id: 'pipe',
      holdPoint: 'order',
      consequence: 'damage',
      kind: 'length',
      limit: { min: diameterLeast },
      source: 'condensate.pipe',
      ...(water.ok ? { facts: { litres: water.value.high } } : {}),
    },
    (rec) => {
      // A usual size says nothing of a drain that nobody has measured yet.
      if ('missing' in drain.run && Object.keys(drain.stretches).length === 0)
        return unresolved('missing', drain.run.path);
      return entered('d', drain.size)(rec);
    },
  );

/** Only where it is known: the pipe's least size carries any house's water as long as it falls. */
function pipeFilled({ filled, water, workings }: CondensateResult): Found[] {
  if (!filled.ok) return [];
  return [
    {
      draft: {
        id: 'pipe-filled',
        subject: 'drain',
        holdPoint: 'order',
        consequence: 'damage',
        kind: 'fraction',
        value: filled,
        limit: { max: 1 },
        source: 'condensate.manning',
        working: 'condensate/pipe-filled',
        ...(water.ok ? { facts: { litres: water.value.likely } } : {}),
      },
      working: workings['condensate/pipe-filled'] ?? [],
    },
  ];
}

const panDepth = ({ panTime }: CondensateResult, { pan }: Drain): Found =>
  told(
    {
      id: 'pan-depth',
      holdPoint: 'order',
      consequence: 'damage',
      kind: 'length',
      limit: { min: panDepthLeast },
      source: 'condensate.pan',
      ...(panTime.ok ? { facts: { fills: panTime.value } } : {}),
    },
    entered('h_pan', pan.depth),
  );

/** By how much the pan reaches beyond the unit that lies in it, the smaller of length and width. */
function panLarger({ project, trades }: PlanView): Found {
  const { pan } = project.routes.drain;
  const s = scenario();
  return told(
    {
      id: 'pan-larger',
      holdPoint: 'order',
      consequence: 'damage',
      kind: 'length',
      limit: { min: panBeyond },
      source: 'condensate.pan',
    },
    (rec) => {
      const id = required(trades.equipment?.chosen ?? { ok: false, because: 'missing', paths: ['candidates'] });
      const handler = project.candidates[id]?.handler ?? unresolved('missing', `candidates.${id}.handler`);
      const sides = [s.of(handler.width), s.of(handler.depth), s.of(handler.height)].sort((a, b) => b - a);
      const [length = 0, width = 0] = sides;
      const inputs = { pan_l: s.of(pan.length), pan_w: s.of(pan.width), unit_l: length, unit_w: width };
      const beyond = Math.min(inputs.pan_l - length, inputs.pan_w - width);
      rec.step('beyond', 'min(pan_l - unit_l, pan_w - unit_w)', inputs, beyond, 'm', 'condensate.pan');
      return beyond;
    },
  );
}

const frostFacts = ({ cold, solid, winter, standing }: Frost) => ({
  ...(cold === undefined || solid === undefined ? {} : { cold, solid }),
  ...(standing.length > 0 ? { standing: standing.join(', ') } : {}),
  ...(winter ? { hours: winter.hours, longest: winter.longest, ice: winter.ice } : {}),
});

/** Not where it is heated or emptied every autumn. */
function freezes({ frost, workings }: CondensateResult, drain: Drain): Found[] {
  if ('choice' in drain.heated && drain.heated.choice === 'yes') return [];
  return [
    {
      draft: {
        id: 'freezes',
        subject: 'drain',
        holdPoint: 'season',
        consequence: 'damage',
        kind: 'temperature',
        value: attempt(() => required(frost).air),
        limit: { min: 0 },
        source: 'condensate.frost',
        working: 'condensate/freezes',
        ...(frost.ok && frost.value.air.low < 0 ? { facts: frostFacts(frost.value) } : {}),
      },
      working: workings['condensate/freezes'] ?? [],
    },
  ];
}
