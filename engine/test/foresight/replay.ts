import type { Dispatch } from '../../src/physics/dispatch/index.ts';

/** A way of control that knows nothing of what comes: K by which the room is to stray, and whether the generator runs. */
export type Policy = (step: number, share: number, running: boolean) => { readonly aim: number; readonly run: boolean };

/** A step's answer: what is stored after it, kWh of the generator, and whether all was served. */
type Step = { readonly stored: number; readonly generated: number; readonly served: boolean };

const sum = (x: readonly number[]): number => x.reduce((a, b) => a + b, 0);

/** kWh of electricity for kWh of heat along its rising pieces. */
function drawOf(pieces: readonly { readonly width: number; readonly slope: number }[], heat: number): number {
  let left = heat;
  return sum(
    pieces.map(({ width, slope }) => {
      const part = Math.min(left, width);
      left -= part;
      return part * slope;
    }),
  );
}

/** kWh into the inverter for kWh out of it; infinite beyond its pieces. */
function intoInverter(d: Dispatch, out: number): number {
  let left = out;
  const into = d.inverter.pieces.map(({ width, kept }) => {
    const part = Math.min(left, width * kept);
    left -= part;
    return part / kept;
  });
  return left > 1e-12 ? Number.POSITIVE_INFINITY : sum(into);
}

/**
 * One step with a load in kWh: sun first, then the battery; the generator carries what it can and charges. An inverter
 * that nothing could feed rests.
 */
function stepOf(d: Dispatch, t: number, stored: number, load: number, run: boolean): Step {
  const { battery: b, generator, charger, inverter } = d;
  const at = (x: Float64Array): number => x[t] ?? 0;
  const carried = run ? Math.min(load, generator.most) : 0;
  const room = Math.min(at(b.charge), (b.energy - stored) / b.keptIn);
  const gives = Math.max(0, Math.min(at(b.discharge), (stored - at(b.floor)) * b.keptOut));
  const beyond = intoInverter(d, load - carried) + at(d.direct);
  const wanted = Math.max(0, room - Math.max(0, at(d.sun) - beyond - inverter.idle)) / charger.kept;
  const charging = run ? Math.min(charger.most, generator.most - carried, wanted) : 0;
  const bus = at(d.sun) + charging * charger.kept;
  const on = load > carried || bus + gives > inverter.idle;
  const over = bus - beyond - (on ? inverter.idle : 0);
  const into = Math.max(0, Math.min(over, room));
  const outOf = Math.max(0, Math.min(-over, gives));
  return {
    stored: stored + b.keptIn * into - outOf / b.keptOut,
    generated: carried + charging,
    served: over + outOf >= -1e-9,
  };
}

/** The largest share of something that still leaves all served, to a thousandth. */
function most(works: (share: number) => boolean): number {
  let [low, high] = [0, 1];
  for (let i = 0; i < 10; i++) {
    const middle = (low + high) / 2;
    if (works(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/** What a policy costs on the linear model itself, in the programme's own cost. */
export function replay(d: Dispatch, policy: Policy): number {
  const house = d.house;
  if (!house) throw new Error('assert: there is a house');
  let [stored, mass, running, cost] = [d.battery.start, 0, false, 0];
  for (let t = 0; t < d.steps; t++) {
    const { aim, run } = policy(t, stored / d.battery.energy, running);
    const pieces = house.pieces(t);
    const reference = house.heat[t] ?? 0;
    const wanted = reference + (aim - house.left * mass) / (house.atOnce + house.gain);
    const heat = Math.max(0, Math.min(wanted, sum(pieces.map((p) => p.width))));
    const load = d.load[t] ?? 0;
    const tried = (on: boolean, warm: number, kept: number): Step =>
      stepOf(d, t, stored, kept * load + drawOf(pieces, warm * heat), on);
    // What cannot be served starts the generator, then heat is held back, then the household goes short.
    running = run || !tried(false, 1, 1).served;
    const on = running;
    const warm = tried(on, 1, 1).served ? 1 : most((share) => tried(on, share, 1).served);
    const kept = tried(on, warm, 1).served ? 1 : most((share) => tried(on, 0, share).served);
    const given = kept < 1 ? 0 : warm * heat;
    const { stored: after, generated } = tried(on, kept < 1 ? 0 : warm, kept);
    stored = after;
    mass = house.left * mass + house.gain * (given - reference);
    const stray = house.atOnce * (given - reference) + mass;
    const cold = Math.max(0, (house.low[t] ?? 0) - stray);
    cost += generated * (d.generator.cost[t] ?? 0) + (1 - kept) * load * (d.short?.cost ?? 0) + cold * house.cold;
  }
  return cost;
}
