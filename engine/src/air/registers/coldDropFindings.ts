import type { Range } from '@kneewall/project';
import { dropAt } from '../../physics/jet/index.ts';
import { attempt, required, unresolved } from '../../plan/outcome.ts';
import { scenario } from '../../plan/scenario.ts';
import type { PlanView } from '../../plan/trade.ts';
import { recordWorking } from '../../plan/working.ts';
import type { AirModel } from '../ductwork.ts';
import type { Found } from '../found.ts';
import { type TerminalInput, terminalOf } from '../model.ts';
import { blowingOf, distanceOf } from './outlet.ts';

/** m from the ceiling to the middle of a register near it, and the height of heads. Source: `air.cold-drop`. */
export const belowCeiling = 0.2;
const heads = 1.8;

/**
 * Cold air of registers high in a wall on the hot afternoon: how far it falls before it reaches the far wall. What clings
 * to the ceiling does not fall, so the range begins at none; what lets go falls as a free jet.
 */
export function coldDropFindings(model: AirModel, view: PlanView): Found[] {
  const point = view.agreement.converged ? view.agreement.cooling : undefined;
  if (!point) return [];
  return model.terminals.flatMap((t) => {
    const input = view.project.routes.ducts.terminals[t.id];
    const at = point.registers[t.id];
    if (!input || !at || at.flow <= 0 || scenario().choice(input.place) !== 'high') return [];
    const excess = at.temperature - point.indoor;
    return excess < 0 ? [coldDrop(t.id, input, { flow: at.flow, excess, indoor: point.indoor }, view)] : [];
  });
}

type Air = { readonly flow: number; readonly excess: number; readonly indoor: number };

function coldDrop(id: string, input: TerminalInput, { flow, excess, indoor }: Air, view: PlanView): Found {
  const s = scenario();
  const room = view.project.house.rooms[input.room ?? ''];
  const { recorder, steps } = recordWorking();
  const above = attempt(() => s.of((room ?? noRoom(id)).height) - belowCeiling);
  const space = attempt(() => Math.max(0, required(above) - heads));
  const value = attempt((): Range => {
    required(space);
    const { freeArea: A } = terminalOf(id, input, s);
    const x = distanceOf(input, room, blowingOf(input, s), s);
    const jet = { velocity: flow / A, area: A, excess, room: indoor };
    const fall = dropAt(x, jet);
    const d = Math.sqrt((4 * A) / Math.PI);
    recorder.step('v', 'Q / A', { Q: flow, A }, jet.velocity, 'm/s', 'air.cold-drop');
    recorder.step(
      'y',
      '0.065 * 9.80665 * dt * d / ((t + 273.15) * v ^ 2) * (x / d) ^ 3 * d',
      { dt: -excess, d, t: indoor, v: jet.velocity, x },
      fall,
      'm',
      'jet.drop',
    );
    return { low: 0, likely: fall, high: fall };
  });
  return {
    draft: {
      id: `cold-drop:${id}`,
      subject: id,
      holdPoint: 'cut',
      consequence: 'comfort',
      kind: 'length',
      value,
      limit: { max: space.ok ? space.value : 0 },
      source: 'air.cold-drop',
      working: `air/cold-drop:${id}`,
      facts: { name: input.name ?? id, colder: -excess, above: above.ok ? above.value : 0 },
    },
    working: steps,
  };
}

const noRoom = (id: string) => unresolved('missing', `routes.ducts.terminals.${id}.room`);
