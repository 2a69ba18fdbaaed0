import { partsOf } from '../../air/balance/parts.ts';
import { house, section, terminal } from '../../air/balance/randomDucts.ts';
import type { AirModel } from '../../air/ductwork.ts';
import { nominalAir, solveFlows } from '../../air/flows.ts';
import { balancing } from './balancing.ts';
import { lossAt, runsOf, scaledRuns, withLosses } from './runs.ts';
import type { Balancing, BalancingInputs } from './system.ts';

/** Numbers from 0 to 1, the same for the same seed (Lehmer). */
export function numbers(seed: number): () => number {
  let x = (seed * 7919 + 104_729) % 2_147_483_647;
  return () => {
    x = (x * 48_271) % 2_147_483_647;
    return x / 2_147_483_647;
  };
}
export const normal = (next: () => number): number => Math.sqrt(-2 * Math.log(next())) * Math.cos(2 * Math.PI * next());

/** An invented house of n rooms: two trunks off the unit, flexible runs that leak a little. */
export function planned(n: number, next: () => number): { model: AirModel; shares: Record<string, number> } {
  const trunks = ['left', 'right'].map((id) => section(id, { diameter: 0.3, length: 2 + 2 * next(), leakage: 0.02 }));
  const runs = Array.from({ length: n }, (_, i) =>
    section(`run-${i}`, {
      from: i % 2 === 0 ? 'left' : 'right',
      kind: 'flexible',
      diameter: 0.15 + 0.05 * next(),
      length: 2 + 5 * next(),
      roughness: 9e-4,
      frictionFactor: 1.4,
      lossCoefficient: 1 + next(),
      leakage: 0.03,
    }),
  ).map((x) => ({ ...x, area: (Math.PI * x.diameter ** 2) / 4 }));
  const model = house(
    [...trunks, ...runs],
    runs.map((x, i) => terminal(`reg-${i}`, x.id, `room-${i}`, 1500)),
  );
  const flows = solveFlows(model, nominalAir).terminals;
  const all = runs.reduce((a, _, i) => a + (flows[`reg-${i}`] ?? 0), 0);
  return {
    model,
    shares: Object.fromEntries(
      runs.map((_, i) => [`room-${i}`, ((flows[`reg-${i}`] ?? 0) / all) * (0.8 + 0.4 * next())]),
    ),
  };
}

/** What was really built: other runs, leaks, walls of the duct (and so other powers of flow), filter and blower. */
export function built(
  model: AirModel,
  next: () => number,
  more: { low: number; high: number; other: number },
): AirModel {
  const { bare, places } = runsOf({ air: model, drawn: {}, noted: {} });
  const { low, high, other } = more;
  const spoilt = scaledRuns(
    bare,
    places,
    places.map(() => low * (high / low) ** next()),
  );
  const about = () => 1 + other * (2 * next() - 1);
  return {
    ...spoilt,
    sections: spoilt.sections.map((x) => ({
      ...x,
      leakage: x.leakage * about(),
      roughness: x.roughness * about(),
      frictionFactor: x.frictionFactor * (1 + (about() - 1) / 5),
    })),
    filter: { ...spoilt.filter, pressure: spoilt.filter.pressure * about() },
    blower: {
      ...spoilt.blower,
      points: spoilt.blower.points.map((p) => ({ ...p, pressure: p.pressure * (1 + 0.1 * other * (2 * next() - 1)) })),
    },
  };
}

/** Parts of their shares that rooms really get with dampers of these losses. */
export function reallyGets(truth: AirModel, shares: Record<string, number>, losses: readonly number[]) {
  const { places } = runsOf({ air: truth, drawn: {}, noted: {} });
  const sum = Object.values(shares).reduce((a, b) => a + b, 0);
  const wanted = Object.fromEntries(Object.entries(shares).map(([room, s]) => [room, s / sum]));
  const flows = solveFlows(withLosses(truth, places, losses), nominalAir);
  return { flows, parts: partsOf(places, wanted, flows) };
}

export const worstOf = (parts: Readonly<Record<string, number>>): number =>
  Math.max(...Object.values(parts).map((p) => Math.abs(p - 1)));

/** A house read with these errors, what is proposed, and what its rooms get before and after. */
export function trip(seed: number, rooms: number, errors: { common: number; alone: number }, other: number) {
  const next = numbers(seed);
  const { model, shares } = planned(rooms, next);
  const truth = built(model, next, { low: 0.6, high: 1.8, other });
  const { places } = runsOf({ air: model, drawn: {}, noted: {} });
  const before = places.map(() => lossAt(0));
  const was = reallyGets(truth, shares, before);
  const alike = Math.exp(errors.common * normal(next));
  const read = Object.fromEntries(
    Object.entries(was.flows.terminals).map(([id, q]) => [id, q * alike * (1 + errors.alone * normal(next))]),
  );
  const inputs: BalancingInputs = { air: model, drawn: {}, noted: {}, shares, read, ...errors };
  const found = balancing(inputs);
  if (!found.ok) throw new Error(`assert: balanced, not ${found.because}`);
  return {
    ...after(
      found.value,
      truth,
      shares,
      places.map((p) => p.id),
      before,
    ),
    was: worstOf(was.parts),
    truth,
    inputs,
    found: found.value,
  };
}

function after(found: Balancing, truth: AirModel, shares: Record<string, number>, ids: string[], before: number[]) {
  const losses = before.map((k, i) => found.moves.find((m) => m.place === ids[i])?.after ?? k);
  const real = reallyGets(truth, shares, losses);
  return { parts: real.parts, real: real.flows, is: worstOf(real.parts), losses };
}
