import type { Range } from '@kneewall/project';
import { throwConstants, throwTo } from '../../physics/jet/index.ts';
import { attempt, required } from '../../plan/outcome.ts';
import { type Scenario, scenario, spread } from '../../plan/scenario.ts';
import type { PlanView } from '../../plan/trade.ts';
import { recordWorking } from '../../plan/working.ts';
import type { AirFlows, AirModel } from '../ductwork.ts';
import type { Found } from '../found.ts';
import { sideOf, type TerminalInput, terminalOf } from '../model.ts';
import { blowingOf, distanceOf } from './outlet.ts';

/** m/s at which a jet is said to have ended: 50 fpm. Source: `air.throw`. */
export const jetEnds = 0.25;
/** Shares of the way a jet should cover. Source: `air.throw`. */
const enough = 0.75;
const tooMuch = 2;

/** How far each register's jet gets on its way across the room, or up to the ceiling, as a share of that way. */
export function throwFindings(model: AirModel, flows: AirFlows, view: PlanView): Found[] {
  return model.terminals.flatMap((t) => {
    const input = view.project.routes.ducts.terminals[t.id];
    const supply = sideOf(model, t.section) === 'supply';
    // One that blows straight down is judged by how deep its warm air comes.
    if (!input || !supply || blowingOf(input, scenario()).way === 'down') return [];
    return [throwOf(t.id, input, flows.terminals[t.id] ?? 0, view)];
  });
}

function throwOf(id: string, input: TerminalInput, flow: number, view: PlanView): Found {
  const room = view.project.house.rooms[input.room ?? ''];
  const { recorder, steps } = recordWorking();
  const { way } = blowingOf(input, scenario());
  const at = (s: Scenario) => {
    const { freeArea } = terminalOf(id, input, s);
    const blowing = blowingOf(input, s);
    const k = throwConstants[blowing.outlet];
    const v = flow / freeArea;
    return {
      freeArea,
      k,
      v,
      reach: throwTo(jetEnds, k, v, freeArea),
      distance: distanceOf(input, room, blowing, s),
    };
  };
  const likely = attempt(() => at(scenario()));
  const value = attempt((): Range => {
    const { freeArea: A, k: K, v, reach, distance } = required(likely);
    recorder.step('Q', 'table', {}, flow, 'm³/s', 'air.flows');
    recorder.step('v', 'Q / A', { Q: flow, A }, v, 'm/s', 'air.throw');
    recorder.step('x', 'K * v * sqrt(A) / v_end', { K, v, A, v_end: jetEnds }, reach, 'm', 'jet.throw');
    recorder.step('share', 'x / L', { x: reach, L: distance }, reach / distance, '', 'air.throw');
    const { share } = spread((s) => {
      const x = at(s);
      return { share: x.reach / x.distance };
    });
    return { low: share.low, likely: reach / distance, high: share.high };
  });
  return {
    draft: {
      id: `throw:${id}`,
      subject: id,
      holdPoint: 'order',
      consequence: 'comfort',
      kind: 'fraction',
      value,
      limit: { min: enough, ...(way === 'up' ? {} : { max: tooMuch }) },
      source: 'air.throw',
      working: `air/throw:${id}`,
      facts: { name: input.name ?? id, way, ...(likely.ok ? wordsNeed(likely.value) : {}) },
    },
    working: steps,
  };
}

/** At the same flow the reach goes with one over the root of the open area: what area would do. */
function wordsNeed(x: { freeArea: number; reach: number; distance: number }): Record<string, number> {
  const wanted = x.reach < enough * x.distance ? enough : tooMuch;
  return { reach: x.reach, distance: x.distance, open: x.freeArea * (x.reach / (wanted * x.distance)) ** 2 };
}
