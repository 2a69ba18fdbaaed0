import { beneathTable } from '../../air/flows.ts';
import { attempt, type Outcome, unresolved } from '../../plan/outcome.ts';
import { allowed, band, fewestMoves, onMarks } from './fewestMoves.ts';
import { type Fit, fitRuns } from './fitRuns.ts';
import { type Runs, runsOf, scaledRuns } from './runs.ts';
import { type Ducts, degreesOf, isOpen, type State, type StateAt, setTo, statesOf } from './setTo.ts';
import type { Balancing, BalancingInputs, Move } from './system.ts';
import { tellingPlaces } from './telling.ts';

/**
 * Rough readings ask for a nearer aim, so that a room off by what its own reading was off still comes within 15 % nine
 * times in ten; never nearer than blades can be set. Source: `commissioning.balancing`.
 */
const checkBand = 0.15;
const nineInTen = 1.28;
const narrowest = 0.06;
/** m of diameter grow with a flow at the same pressure: the fifth root of its square. */
const diameterGrowth = 0.4;

/**
 * From the flows read at all registers to the dampers to move: each run's own resistance first, then the fewest dampers
 * that bring every room within 10 % of its share, as a hand can set them. Unresolved where a register was not read, where
 * no room is to get anything, or where flows do not settle. Source: `commissioning.balancing`.
 */
export const balancing = (inputs: BalancingInputs): Outcome<Balancing> =>
  attempt(() => {
    const runs = runsOf(inputs);
    const { places } = runs;
    if (places.length < 2) return unresolved('missing', 'routes.ducts.terminals');
    const read = places.map((p) => p.registers.reduce((a, t) => a + (inputs.read[t] ?? Number.NaN), 0));
    if (read.some((q) => !(q > 0))) return unresolved('missing', 'readings');
    if (!places.some((p) => (inputs.shares[p.room] ?? 0) > 0)) return unresolved('missing', 'house.rooms');
    // Readings of several registers behind one damper are added up: their own errors partly cancel.
    const alone = places.map((p) => inputs.alone / Math.sqrt(p.registers.length));
    const fit = fitRuns(runs, read, { common: inputs.common, alone });
    const model = scaledRuns(runs.bare, places, fit.logs.map(Math.exp));
    const ducts: Ducts = { model, places, shares: inputs.shares };
    const stateAt = statesOf(ducts);
    const now = stateAt(runs.losses) ?? unresolved('not-converged', 'routes.ducts');
    if (beneathTable(now.flows, model)) return unresolved('out-of-range', 'candidates.*.blower.speeds');
    return told(inputs, runs, fit, ducts, now, settled(inputs, ducts, stateAt, now));
  });

type Settled = { readonly state: State; readonly word: Balancing['word']; readonly tried: number };

function settled(inputs: BalancingInputs, ducts: Ducts, stateAt: StateAt, now: State): Settled {
  if (now.worst <= band) return { state: now, word: 'good', tried: 0 };
  const { staticMost } = inputs;
  const may = allowed({ model: ducts.model, ...(staticMost === undefined ? {} : { staticMost }) }, now);
  const sure = Math.max(narrowest, Math.min(band, checkBand - nineInTen * inputs.alone));
  const found =
    fewestMoves(ducts, stateAt, now, may, sure) ??
    (sure < band ? fewestMoves(ducts, stateAt, now, may, band) : undefined);
  if (found) return { state: found.state, word: 'move', tried: found.tried };
  // Not all rooms can be helped: as near as all dampers together come, if that is nearer than now.
  const all = ducts.places.map((_, i) => i);
  const near = onMarks(ducts, stateAt, setTo(ducts, stateAt, now.losses, all), all, may);
  return { state: near && near.worst < now.worst ? near : now, word: 'short', tried: all.length };
}

function told(inputs: BalancingInputs, runs: Runs, fit: Fit, ducts: Ducts, now: State, after: Settled): Balancing {
  const { places } = runs;
  const { state, word, tried } = after;
  const sum = Object.keys(now.parts).reduce((a, room) => a + (inputs.shares[room] ?? 0), 0);
  const rise = Math.exp(fit.offset);
  const moves = movesOf(ducts, now, state);
  const n = places.length;
  const tells = tellingPlaces({ ...runs, losses: state.losses }, fit, inputs.alone);
  return {
    word,
    runs: places.map((p, i) => ({
      place: p.id,
      name: p.name,
      factor: Math.exp(fit.logs[i] ?? 0),
      doubt: Math.sqrt(Math.max(0, fit.covariance[i * n + i] ?? 0)),
    })),
    rooms: Object.entries(now.parts).map(([room, part]) => ({
      room,
      wanted: (inputs.shares[room] ?? 0) / sum,
      now: part,
      after: state.parts[room] ?? part,
    })),
    moves,
    registers: places.flatMap((p) =>
      p.registers.map((register) => ({
        register,
        read: inputs.read[register] ?? 0,
        after: (state.flows.terminals[register] ?? 0) * rise,
      })),
    ),
    checks: moves.length === 0 ? [] : tells.flatMap((i) => places[i]?.registers.slice(0, 1) ?? []),
    larger: largerRuns(ducts, state),
    staticNow: now.flows.staticPressure,
    staticThen: state.flows.staticPressure,
    tried,
  };
}

/** In the order of the way: attic before rooms, dampers of one plenum together, those to open first. */
function movesOf({ model, places }: Ducts, now: State, state: State): Move[] {
  const sections = new Map(model.sections.map((x) => [x.id, x]));
  const made = places.flatMap((p, i): Move[] => {
    const [before, after] = [now.losses[i] ?? 0, state.losses[i] ?? 0];
    if (Math.abs(after - before) < 1e-9) return [];
    const collar = p.at === 'collar' ? sections.get(p.id) : undefined;
    const marks = collar && p.diameter !== undefined ? { from: degreesOf(before), to: degreesOf(after) } : {};
    const spot = collar ? (collar.from ?? 'unit') : p.room;
    const inAttic = collar?.place === 'attic';
    return [{ place: p.id, name: p.name, room: p.room, at: p.at, spot, inAttic, before, after, ...marks }];
  });
  return made.sort(
    (a, b) =>
      Number(b.inAttic) - Number(a.inAttic) ||
      (a.spot < b.spot ? -1 : a.spot > b.spot ? 1 : 0) ||
      a.after - a.before - (b.after - b.before),
  );
}

/** Rooms short of the band with their dampers open: how much wider their runs would have to be. */
function largerRuns({ places }: Ducts, { parts, losses }: State): Record<string, number> {
  return Object.fromEntries(
    places.flatMap((p, i) => {
      const part = parts[p.room] ?? 1;
      return part < 1 - band && isOpen(losses[i] ?? 0) ? [[p.id, (1 / part) ** diameterGrowth]] : [];
    }),
  );
}
