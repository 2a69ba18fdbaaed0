import type { Job } from '../jobs/job.ts';
import { attempt, type Outcome, required, unresolved } from '../plan/outcome.ts';
import type { Scenario, Spread } from '../plan/scenario.ts';
import { scenario, spread } from '../plan/scenario.ts';
import type { TradeInput } from '../plan/trade.ts';
import { recordWorking, type Working } from '../plan/working.ts';
import { balanceInput, balanceJob } from './balance/balanceJob.ts';
import { operatingPoints, tableRises } from './blower/operatingPoints.ts';
import { curvesOf } from './curves.ts';
import { shutDesign } from './doors/shutDesign.ts';
import { drawnPieces } from './drawnPieces.ts';
import type { AirFlows, AirModel } from './ductwork.ts';
import { named, nominalAir, notBeyondTable, type PlacedFlows, placedSolver } from './flows.ts';
import { ladderOf } from './ladder.ts';
import { airModel, type Ducts, sideOf } from './model.ts';
import { pendingIn } from './pendingIn.ts';
import type { AirResult, RoomAir } from './result.ts';
import { fittingsOf } from './sizing/fittingsOf.ts';
import type { There } from './there.ts';
import { unitBehind, wantedFlow } from './unitBehind.ts';
import { unitEnds } from './unitEnd.ts';

type Input = TradeInput<'climate' | 'loads' | 'equipment'>;

/** What really flows through the ducts as drawn with the chosen unit's blower, and what each room wants. Pure. */
export function design({ project, upstream }: Input): AirResult {
  const { ducts } = project.routes;
  const { climate, loads, equipment } = upstream;
  const unit = attempt(() => unitBehind(ducts, equipment));
  const build = (s: Scenario): AirModel =>
    airModel(ducts, required(unit).blower, required(climate.pressure), s, (own) => unitEnds(project, own));
  const model = attempt(() => build(scenario()));
  const solve = placedSolver();
  const solved = attempt(() => solve(required(model), nominalAir));
  const flows = attempt(() => notBeyondTable(flowsByName(required(model), required(solved)), required(model)));
  const rooms = Object.keys(loads.rooms);
  const shut = shutDesign(
    project.house,
    { climate, loads },
    attempt(() => {
      required(flows);
      return { model: required(model), open: required(solved) };
    }),
  );
  const spreads = attempt(() => {
    required(flows);
    const roomsFed = registersOf(required(model), rooms);
    return spread((s) => {
      const { own, open } = s.part('flows', (only) => {
        const built = build(only);
        return { own: built, open: solve(built, nominalAir, required(solved).start) };
      });
      return { ...outputs(own, roomsFed, open), ...shut.pressures(own, open, s) };
    });
  });
  const pick = (key: string): Outcome<Spread> =>
    attempt(() => required(spreads)[key] ?? unresolved('missing', 'routes.ducts'));
  const designFlow = attempt(() => wantedFlow(required(unit), required(flows)));
  const workings: Record<string, Working> = {};
  const byRoom = Object.fromEntries(
    rooms.map((room) => [room, roomAir(room, upstream, designFlow, pick(`room:${room}`), workings)]),
  );
  const balance = attempt(() => balanceWanted(required(model), required(flows), ducts, loads));
  return {
    model,
    flows,
    rooms: byRoom,
    balance: pendingIn(balance),
    sizing: notAsked,
    there: nothingThere,
    fittings: drawnPieces(ducts, nothingThere, scenario()),
    flow: pick('flow'),
    staticPressure: pick('static'),
    filterVelocity: pick('filterVelocity'),
    ...(model.ok && tableRises(model.value)
      ? { operatingPoints: attempt(() => operatingPoints(required(model), nominalAir)) }
      : {}),
    ...shut.result(pick),
    ladder: attempt(() => ladderOf(required(model), required(flows))),
    curves: attempt(() => curvesOf(required(model), required(flows), required(solved).start)),
    workings,
    wanted: balance.ok ? [balance.value] : [],
  };
}

/** Dampers are worth looking for once air is known to flow. */
const balanceWanted = (model: AirModel, _flows: AirFlows, ducts: Ducts, loads: Input['upstream']['loads']): Job =>
  balanceJob(balanceInput(model, fittingsOf(ducts, scenario()), loads));

/** What others may know of flows as solved. */
function flowsByName(model: AirModel, placed: PlacedFlows): AirFlows {
  const { start: _start, pressures: _pressures, ends: _ends, ...flows } = named(model, placed);
  return flows;
}

/** Sizes hang on more of the document than this: see `withSizing`. */
const nothingThere: There = { sections: {}, terminals: [], before: [], unhung: [], replaced: [] };
const notAsked = { ok: false, because: 'pending', paths: [] } as const;

/** By room, the places of the registers that blow into it. */
const registersOf = (model: AirModel, rooms: readonly string[]): Registers =>
  rooms.map((room) => [
    room,
    model.terminals.flatMap((t, i) => (t.room === room && sideOf(model, t.section) === 'supply' ? [i] : [])),
  ]);

type Registers = readonly (readonly [string, readonly number[]])[];

function outputs({ filter, sections }: AirModel, fed: Registers, flows: PlacedFlows): Record<string, number> {
  const found: Record<string, number> = {
    flow: flows.flow,
    static: flows.staticPressure,
    filterVelocity: flows.flow / filter.area,
  };
  for (const [room, registers] of fed)
    found[`room:${room}`] = registers.reduce((a, i) => a + (flows.start[sections.length + i] ?? 0), 0);
  return found;
}

/** A room's share of the unit's air is its share of the load; the season that asks for more governs. */
function roomAir(
  room: string,
  { loads }: Input['upstream'],
  designFlow: Outcome<number>,
  reaches: Outcome<Spread>,
  workings: Record<string, Working>,
): RoomAir {
  const load = loads.rooms[room];
  const shares = attempt(() => {
    if (!load) return unresolved('missing', 'house.rooms');
    return {
      heating: required(load.heating).likely / required(loads.heating).likely,
      cooling: Math.max(0, required(load.cooling).likely / required(loads.cooling).sensible.likely),
    };
  });
  const { recorder, steps } = recordWorking();
  const wanted = attempt(() => {
    const { heating, cooling } = required(shares);
    const q = required(designFlow);
    const flow = q * Math.max(heating, cooling);
    recorder.step('Q_unit', 'table', {}, q, 'm³/s', 'air.room-share');
    recorder.step(
      'Q_room',
      'Q_unit * max(s_heating, s_cooling)',
      { Q_unit: q, s_heating: heating, s_cooling: cooling },
      flow,
      'm³/s',
      'air.room-share',
    );
    return flow;
  });
  workings[`air/wanted:${room}`] = steps;
  return {
    room,
    wanted,
    governs: shares.ok && shares.value.cooling > shares.value.heating ? 'cooling' : 'heating',
    reaches,
  };
}
