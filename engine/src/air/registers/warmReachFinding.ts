import { reachDown, throwConstants, throwTo } from '../../physics/jet/index.ts';
import { attempt, type Outcome, required } from '../../plan/outcome.ts';
import { scenario } from '../../plan/scenario.ts';
import type { PlanView } from '../../plan/trade.ts';
import { recordWorking, type WorkingRecorder } from '../../plan/working.ts';
import type { AirModel } from '../ductwork.ts';
import type { Found } from '../found.ts';
import { sideOf, type TerminalInput, terminalOf } from '../model.ts';
import { blowingOf, distanceOf } from './outlet.ts';

/** m above the floor that warm air should come down to, and the speed it should still have, m/s. Source: `air.warm-reach`. */
const headHeight = 1.4;
const stillMoving = 0.8;

type Reach = {
  readonly id: string;
  readonly name: string;
  readonly flow: number;
  readonly down: number;
  readonly wanted: number;
};

/** The one that falls shortest; of those that do so alike the one with most air. */
const shortestFirst = (a: Reach, b: Reach): number =>
  a.down - a.wanted - (b.down - b.wanted) || b.flow - a.flow || (a.id < b.id ? -1 : 1);

/**
 * On the cold night, how far below the ceiling the warm air of the registers up there comes, for the one that falls
 * shortest. Both bounds are generous: what is left of the throw after the far wall, and how deep a warm jet gets that is
 * blown straight down. Nothing to say where every register is low.
 */
export function warmReachFinding(model: AirModel, view: PlanView): Found[] {
  const point = view.agreement.converged ? view.agreement.heating : undefined;
  if (!point) return [];
  const high = model.terminals.flatMap((t) => {
    const input = view.project.routes.ducts.terminals[t.id];
    const supply = sideOf(model, t.section) === 'supply';
    return input && supply && blowingOf(input, scenario()).way !== 'up' ? [{ id: t.id, input }] : [];
  });
  const reaches = high.map(({ id, input }) => attempt(() => reachOf(id, input, view)));
  const known = reaches.flatMap((r) => (r.ok ? [r.value] : []));
  const [worst] = [...known].sort(shortestFirst);
  const missing = reaches.find((r) => !r.ok);
  if (high.length === 0 || (!worst && !missing)) return [];
  const { recorder, steps } = recordWorking();
  const value: Outcome<number> = worst
    ? attempt(() => reachOf(worst.id, required(inputOf(worst.id, view)), view, recorder).down)
    : (missing as Outcome<never>);
  const short = known.filter((r) => r.down < r.wanted).length;
  return [
    {
      draft: {
        id: 'warm-reach',
        subject: worst?.id ?? 'registers',
        holdPoint: 'cut',
        consequence: 'comfort',
        kind: 'length',
        value,
        limit: { min: worst?.wanted ?? 0 },
        source: 'air.warm-reach',
        working: 'air/warm-reach',
        facts: { name: worst?.name ?? '', short, all: high.length },
      },
      working: steps,
    },
  ];
}

function inputOf(id: string, view: PlanView): Outcome<TerminalInput> {
  const input = view.project.routes.ducts.terminals[id];
  return input
    ? { ok: true, value: input }
    : { ok: false, because: 'missing', paths: [`routes.ducts.terminals.${id}`] };
}

function reachOf(id: string, input: TerminalInput, view: PlanView, recorder?: WorkingRecorder): Reach {
  const s = scenario();
  const point = view.agreement.heating;
  const at = point?.registers[id];
  const room = view.project.house.rooms[input.room ?? ''];
  const { freeArea: A } = terminalOf(id, input, s);
  const blowing = blowingOf(input, s);
  const [v, excess, t] = [(at?.flow ?? 0) / A, (at?.temperature ?? 0) - (point?.indoor ?? 0), point?.indoor ?? 20];
  recorder?.step('v', 'Q / A', { Q: at?.flow ?? 0, A }, v, 'm/s', 'air.warm-reach');
  // Air no warmer than the room is not held up by anything: its throw is all there is.
  const deep = excess > 0 ? reachDown({ velocity: v, area: A, excess, room: t }) : Number.POSITIVE_INFINITY;
  if (excess > 0)
    recorder?.step(
      'x_warm',
      '2.46 * v * sqrt(sqrt(A / 3.141592653589793)) / sqrt(9.80665 * dt / (t + 273.15))',
      { v, A, dt: excess, t },
      deep,
      'm',
      'jet.fountain',
    );
  const reach = throwTo(stillMoving, throwConstants[blowing.outlet], v, A);
  const wall = blowing.way === 'down' ? 0 : distanceOf(input, room, blowing, s);
  const left = Math.max(0, reach - wall);
  recorder?.step('x_left', 'max(0, x - L)', { x: reach, L: wall }, left, 'm', 'jet.throw');
  const down = Math.min(left, deep);
  recorder?.step(
    'x_down',
    excess > 0 ? 'min(x_left, x_warm)' : 'x_left',
    warmInputs(left, deep),
    down,
    'm',
    'air.warm-reach',
  );
  const height = room ? s.of(room.height) : headHeight;
  return { id, name: input.name ?? id, flow: at?.flow ?? 0, down, wanted: Math.max(0, height - headHeight) };
}

const warmInputs = (left: number, deep: number): Record<string, number> =>
  Number.isFinite(deep) ? { x_left: left, x_warm: deep } : { x_left: left };
