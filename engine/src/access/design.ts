import { inOrder } from '@kneewall/project';
import type { ClimateResult } from '../climate/result.ts';
import type { EquipmentResult } from '../equipment/result.ts';
import type { LoadsResult } from '../loads/result.ts';
import { noting } from '../plan/noting.ts';
import { attempt, required, unresolved } from '../plan/outcome.ts';
import { scenario } from '../plan/scenario.ts';
import type { TradeInput } from '../plan/trade.ts';
import type { Working } from '../plan/working.ts';
import { workingHeat } from './atticHeat.ts';
import { hotDayMinutes } from './hotDay.ts';
import { heatHours } from './hoursOfWork.ts';
import { hoistedOf, mayLift, raisedOf, stepsOf } from './lifting.ts';
import { membersOf } from './members.ts';
import { eachOnce, passageJob } from './motion/passageJob.ts';
import { panelsOf } from './panels.ts';
import { waysOf } from './passing.ts';
import { loadedOf, mountedOf } from './platform.ts';
import { rampTimber } from './rampTimber.ts';
import type { AccessResult } from './result.ts';

export type Upstream = {
  readonly climate: ClimateResult;
  readonly loads: LoadsResult;
  readonly equipment: EquipmentResult;
};

/** Whether the boxes pass, who lifts them, what carries them, and how long people can work up there. Pure. */
export function design({ project, upstream }: TradeInput<keyof Upstream>): AccessResult {
  const s = scenario();
  const { passages, access } = project.routes;
  const { lifting, outdoor, platform, heat } = access;
  const workings: Record<string, Working> = {};
  const noted = noting('access', workings);
  const chosen = attempt(() => required(upstream.equipment.chosen));
  const unit = attempt(() => project.candidates[required(chosen)] ?? unresolved('missing', 'candidates'));
  const massOf = (piece: 'handler' | 'handlerCrated' | 'outdoorUnit') =>
    attempt(() => s.of(required(unit)[piece].mass));
  const listed = inOrder(passages);
  const ways = attempt(() => {
    if (listed.length === 0) return unresolved('missing', 'routes.passages');
    return inOrder(project.candidates).flatMap(([id, candidate]) => waysOf(id, candidate, listed));
  });
  const { ways: asked } = eachOnce(ways.ok ? ways.value.map((w) => w.asked) : []);
  return {
    chosen,
    ways,
    up: s.choice(lifting.up),
    people: attempt(() => s.of(lifting.people)),
    carried: (['handlerCrated', 'handler', 'outdoorUnit'] as const).map((piece) => ({ piece, mass: massOf(piece) })),
    mayLift: noted('may-lift', (rec) => mayLift(lifting, s, rec)),
    hoisted: attempt(() => hoistedOf(lifting, required(massOf('handler')), s)),
    platform: attempt(() => loadedOf(platform, required(massOf('handler')), s)),
    members: attempt(() => membersOf(project.routes, s)),
    panels: attempt(() => {
      const box = unit.ok ? unit.value.handler : undefined;
      const [width, depth] = [box && s.maybe(box.width), box && s.maybe(box.depth)];
      return panelsOf(project.routes, width !== undefined && depth !== undefined ? { width, depth } : undefined, s);
    }),
    ramp: attempt(() => rampTimber(project.routes, s)),
    heat: noted('attic-heat', (rec) => workingHeat(heat, upstream, s, rec)),
    heatHours: attempt(() => heatHours(project, upstream, s)),
    steps: attempt(() => {
      const { width, depth, height } = required(unit).handler;
      const box = { width: s.of(width), depth: s.of(depth), height: s.of(height) };
      return stepsOf(lifting, platform.person, required(massOf('handler')), box, s);
    }),
    outdoorUp: s.choice(outdoor.up),
    raised: attempt(() => raisedOf(outdoor, lifting.sheave, required(massOf('outdoorUnit')), s)),
    mounted: attempt(() => mountedOf(platform, s)),
    hotDay: attempt(() => hotDayMinutes(heat, upstream, s)),
    workings,
    wanted: asked.length > 0 ? [passageJob({ ways: asked })] : [],
  };
}
