import type { Given, Range, ResolvedProject } from '@kneewall/project';
import { unresolved } from '../plan/outcome.ts';
import { type Scenario, sampledScenario } from '../plan/scenario.ts';
import type { WorkingRecorder } from '../plan/working.ts';
import { loadConstant, multipliers, togetherShare } from './kernels/lifting.ts';
import { gravity, hoist } from './kernels/rope.ts';
import type { Hoisted } from './result.ts';

type Lifting = ResolvedProject['routes']['access']['lifting'];

/** kg that those who carry may lift together, on their feet, on firm and level ground. A few lifts in less than an hour. */
export function mayLift(lifting: Lifting, s: Scenario, rec: WorkingRecorder): number {
  const people = s.of(lifting.people);
  if (!(people >= 1)) return unresolved('out-of-range', lifting.people.path);
  const shares = multipliers({
    reach: 100 * s.of(lifting.reach),
    height: 100 * s.of(lifting.low),
    travel: 100 * s.of(lifting.travel),
    twist: 0,
    perMinute: 0.2,
    hours: 1,
    coupling: s.choice(lifting.grip),
  });
  const inputs = { ...shares, load: loadConstant };
  const one = shares.HM * shares.VM * shares.DM * shares.AM * shares.FM * shares.CM * loadConstant;
  if (!(one > 0)) return unresolved('out-of-range', lifting.reach.path, lifting.low.path, lifting.travel.path);
  rec.step('one', 'HM * VM * DM * AM * FM * CM * load', inputs, one, 'kg', 'access.lifting');
  const share = togetherShare(people);
  const together = one * people * share;
  rec.step('together', 'one * n * share', { one, n: people, share }, together, 'kg', 'access.together');
  return together;
}

/** N on the rope and on what the tackle hangs from, for a load of `mass`. */
export function hoistedOf(lifting: Lifting, mass: number, s: Scenario): Hoisted {
  const parts = Math.floor(s.of(lifting.parts));
  if (!(parts >= 1)) return unresolved('out-of-range', lifting.parts.path);
  const at = (reading: Scenario) => {
    const sheave = reading.of(lifting.sheave);
    if (!(sheave > 0)) return unresolved('out-of-range', lifting.sheave.path);
    return hoist(mass, { parts, sheave, lead: s.choice(lifting.lead) === 'yes' });
  };
  const { sheave } = lifting;
  if ('missing' in sheave) return unresolved('missing', sheave.path);
  const [good, likely, bad] = [at(end(sheave, 'high')), at(s), at(end(sheave, 'low'))];
  const pull: Range = { low: good.pull, likely: likely.pull, high: bad.pull };
  return { mass, pull, anchor: s.choice(lifting.lead) === 'yes' ? bad.anchor : mass * gravity };
}

const end = (given: Given, which: 'low' | 'high'): Scenario => sampledScenario(new Map([[given.path, given[which]]]));
