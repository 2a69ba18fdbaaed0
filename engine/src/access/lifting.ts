import type { Given, Missing, Range, ResolvedProject } from '@kneewall/project';
import { unresolved } from '../plan/outcome.ts';
import { type Scenario, sampledScenario } from '../plan/scenario.ts';
import type { WorkingRecorder } from '../plan/working.ts';
import { loadConstant, multipliers, togetherShare } from './kernels/lifting.ts';
import { anchorPull, holdBack, lowerShare, rampHoist } from './kernels/ramp.ts';
import { gravity, hoist } from './kernels/rope.ts';
import type { Hoisted, Raised, Steps } from './result.ts';

type Lifting = ResolvedProject['routes']['access']['lifting'];

/** kg that those who carry may lift together, on their feet, on firm and level ground. A few lifts in less than an hour. */
export function mayLift(lifting: Lifting, s: Scenario, rec: WorkingRecorder): number {
  const people = s.of(lifting.people);
  if (!(people >= 1)) return unresolved('out-of-range', lifting.people.path);
  // The equation was made for people on their feet; nothing published covers knees and elbows.
  if (s.choice(lifting.pose) !== 'standing') return unresolved('out-of-range', poseOf(lifting));
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
  if (s.choice(lifting.lead) !== 'yes') return { mass, pull, anchor: mass * gravity };
  // Held against the pull straight down, which is the most; the lean says where it will be pulled to.
  return { mass, pull, anchor: bad.anchor, leans: anchorPull(mass * gravity, bad.pull, s.of(lifting.aside)).aside };
}

const poseOf = ({ pose }: Lifting): string => ('choice' in pose ? 'routes.access.lifting.pose' : pose.path);

type Outdoor = ResolvedProject['routes']['access']['outdoor'];

/** N to bring the outdoor unit up: along a ramp against friction, or straight up. */
export function raisedOf(outdoor: Outdoor, sheave: Given | Missing, mass: number, s: Scenario): Raised {
  const up = s.choice(outdoor.up);
  if (up !== 'ramp' && up !== 'rope') return unresolved('missing', 'routes.access.outdoor.up');
  const parts = Math.floor(s.of(outdoor.parts));
  if (!(parts >= 1)) return unresolved('out-of-range', outdoor.parts.path);
  if ('missing' in sheave) return unresolved('missing', sheave.path);
  if ('missing' in outdoor.friction) return unresolved('missing', outdoor.friction.path);
  const slope = up === 'rope' ? 90 : s.of(outdoor.slope);
  const at = (friction: number, passes: number) => {
    const ramp = { mass, slope, friction };
    if (!(passes > 0)) return unresolved('out-of-range', sheave.path);
    return { ...rampHoist(ramp, { parts, sheave: passes, lead: true }), back: holdBack(ramp) };
  };
  const { friction } = outdoor;
  const [good, likely, bad] = [
    at(friction.low, sheave.high),
    at(friction.likely, sheave.likely),
    at(friction.high, sheave.low),
  ];
  return {
    mass,
    slope,
    pull: { low: good.pull, likely: likely.pull, high: bad.pull },
    anchor: bad.anchor,
    back: { low: bad.back, likely: likely.back, high: good.back },
  };
}

type Box = { readonly width: number; readonly depth: number; readonly height: number };

/** On a stair the lower of two holds more than half; a ladder holds person, tools and load. */
export function stepsOf(lifting: Lifting, person: Given | Missing, mass: number, box: Box, s: Scenario): Steps {
  const up = s.choice(lifting.up);
  if (up === 'ladder') return { ladder: mass + s.of(person) + s.of(lifting.tools) };
  if (up !== 'stair') return {};
  const [height = 0, , length = 0] = [box.width, box.depth, box.height].sort((a, b) => a - b);
  if (!(length > 0)) return unresolved('missing', 'candidates');
  return { below: mass * Math.min(1, lowerShare(length, height / 2, s.of(lifting.stairSlope))) };
}

const end = (given: Given, which: 'low' | 'high'): Scenario => sampledScenario(new Map([[given.path, given[which]]]));
