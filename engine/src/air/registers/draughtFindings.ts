import { inOrder, type Range } from '@kneewall/project';
import { attempt, type Outcome, required, unresolved } from '../../plan/outcome.ts';
import { type Scenario, scenario, spread } from '../../plan/scenario.ts';
import type { PlanView } from '../../plan/trade.ts';
import { recordWorking } from '../../plan/working.ts';
import type { AirModel } from '../ductwork.ts';
import type { Found } from '../found.ts';
import { sideOf } from '../model.ts';
import { type Leaving, type Passing, passing, type RestPlace, type Room } from './restPlace.ts';

type Mode = 'heating' | 'cooling';

/** m/s that people at rest do not feel yet; who lies feels less of it in winter. Source: `air.draught`. */
const felt = { lying: { heating: 0.15, cooling: 0.25 }, sitting: { heating: 0.25, cooling: 0.25 } } as const;

/** Air moving at beds, cots and sofas that were entered: in each room the one nearest to being felt, in either season. */
export function draughtFindings(model: AirModel, view: PlanView): Found[] {
  if (!view.agreement.converged) return [];
  return inOrder(view.project.house.rooms).flatMap(([id, room]) => {
    const cases = casesIn(id, room, model, view);
    return cases.length > 0 ? [draught(id, room, cases)] : [];
  });
}

/** A place, a register and a season. */
type Case = {
  readonly place: RestPlace;
  readonly register: string;
  readonly season: Mode;
  readonly limit: number;
  readonly at: (s: Scenario) => Passing;
};

function casesIn(id: string, room: Room, model: AirModel, view: PlanView): Case[] {
  const registers = model.terminals.filter((t) => t.room === id && sideOf(model, t.section) === 'supply');
  return inOrder(room.rest).flatMap(([, place]) => {
    const near = registers.filter((t) => place.register === undefined || t.id === place.register);
    return near.flatMap((t) =>
      (['heating', 'cooling'] as const).flatMap((season): Case[] => {
        const air = leavingAt(t.id, season, view);
        const input = view.project.routes.ducts.terminals[t.id];
        if (!air || !input) return [];
        const limit = felt[scenario().choice(place.kind) === 'sofa' ? 'sitting' : 'lying'][season];
        const at = (s: Scenario) => passing(t.id, input, room, place, air, s);
        return [{ place, register: t.name, season, limit, at }];
      }),
    );
  });
}

function leavingAt(register: string, season: Mode, { agreement }: PlanView): Leaving | undefined {
  const point = agreement[season];
  const at = point?.registers[register];
  if (!point || !at || at.flow <= 0) return undefined;
  return { flow: at.flow, excess: at.temperature - point.indoor, indoor: point.indoor };
}

function draught(id: string, room: Room, cases: readonly Case[]): Found {
  const { recorder, steps } = recordWorking();
  const known = cases.map((c) => ({ c, found: attempt(() => c.at(scenario())) }));
  const speedOf = (found: Outcome<Passing>) => (found.ok ? found.value.speed : 0);
  // What is missing has to be said before what is known can be called enough.
  const worst =
    known.find(({ found }) => !found.ok) ??
    [...known].sort((a, b) => speedOf(b.found) / b.c.limit - speedOf(a.found) / a.c.limit)[0];
  const value = attempt((): Range => {
    const { c, found } = worst ?? unresolved('missing', `house.rooms.${id}.rest`);
    const p = required(found);
    recorder.step('v', 'table', {}, p.velocity, 'm/s', 'air.flows');
    recorder.step(
      'v_middle',
      'min(v, K * v * sqrt(A) / x)',
      { K: p.k, v: p.velocity, A: p.area, x: p.way },
      p.middle,
      'm/s',
      'jet.throw',
    );
    recorder.step(
      'v_there',
      'v_middle * exp(-0.6931471805599453 * (r / b) ^ 2)',
      { v_middle: p.middle, r: p.beside, b: p.half },
      p.speed,
      'm/s',
      'jet.beside',
    );
    const { speed } = spread((s) => ({ speed: c.at(s).speed }));
    return { low: Math.max(0, speed.low), likely: p.speed, high: speed.high };
  });
  return {
    draft: {
      id: `draught:${id}`,
      subject: id,
      holdPoint: 'cut',
      consequence: 'comfort',
      kind: 'velocity',
      value,
      limit: { max: worst?.c.limit ?? felt.sitting.heating },
      source: 'air.draught',
      working: `air/draught:${id}`,
      facts: { name: room.name ?? id, ...(worst ? caseFacts(worst.c) : {}) },
    },
    working: steps,
  };
}

const caseFacts = ({ place, register, season }: Case): Record<string, string> => ({
  register,
  season,
  kind: scenario().choice(place.kind),
  ...(place.name === undefined ? {} : { place: place.name }),
});
