import type { FaultKind } from '../../src/commissioning/causes/faults.ts';
import type { Heard } from '../../src/commissioning/causes/likelihood.ts';
import type { ResponseTable } from '../../src/commissioning/causes/table.ts';
import { methods, usualMeans } from '../../src/commissioning/methods.ts';
import { faulty } from '../../src/coupling/asBuilt/faulty.ts';
import { respond } from '../../src/coupling/asBuilt/respond.ts';
import type { AsBuilt } from '../../src/coupling/asBuilt/system.ts';
import { attempt } from '../../src/plan/outcome.ts';
import type { Chance } from './chance.ts';

/** Sizes between which a planted fault is drawn: none of them one of the table's own. */
const sizes: Partial<Readonly<Record<FaultKind, readonly [number, number]>>> = {
  'dirty-filter': [2.2, 6],
  'crushed-run': [3, 30],
  'shut-damper': [150, 900],
  'loose-run': [0.4, 0.9],
  'supply-leak': [0.15, 0.38],
  'return-leak': [0.15, 0.38],
  'return-choked': [2.2, 6],
  'low-charge': [0.15, 0.32],
  'no-insulation': [0.12, 0.35],
  'strips-on': [0.55, 0.95],
};
export const plantedKinds = Object.keys(sizes) as FaultKind[];

/**
 * The house as it was really built: never the plan's model. Every run, register, filter, blower and unit is drawn
 * about the plan, the filter by another law of flow, and the unit loses other shares with its charge.
 */
export function asReallyBuilt(system: AsBuilt, chance: Chance): AsBuilt {
  const about = (share: number) => Math.exp(share * chance.normal());
  const { air, unit, state } = system;
  const [friction, leaks, capacity, power, pressure] = [0.15, 0.3, 0.05, 0.05, 0.05].map(about) as Five;
  return {
    ...system,
    air: {
      ...air,
      sections: air.sections.map((x) => ({
        ...x,
        frictionFactor: x.frictionFactor * friction * about(0.1),
        lossCoefficient: x.lossCoefficient * friction * about(0.15),
        leakage: Math.min(0.3, x.leakage * leaks * about(0.3)),
        insulation: x.insulation * about(0.15),
      })),
      terminals: air.terminals.map((t) => ({ ...t, resistance: t.resistance * about(0.15) })),
      filter: { ...air.filter, pressure: air.filter.pressure * about(0.15), exponent: chance.between(1.15, 1.85) },
      blower: { ...air.blower, points: air.blower.points.map((p) => ({ ...p, pressure: p.pressure * pressure })) },
    },
    unit: { ...unit, rows: unit.rows.map((r) => ({ ...r, capacity: r.capacity * capacity, power: r.power * power })) },
    atticShift: 3 * chance.normal(),
    state: {
      ...state,
      outdoor: state.outdoor + 0.6 * chance.normal(),
      returnAir: state.returnAir + 0.3 * chance.normal(),
    },
  };
}

type Five = [number, number, number, number, number];

/** A fault of that kind in a house as built; which run, and how much, by chance. */
export function planted(
  built: AsBuilt,
  kind: FaultKind,
  chance: Chance,
): { readonly id: string; readonly system: AsBuilt } {
  const [low, high] = sizes[kind] ?? [0, 0];
  const size = low > 1 ? low * (high / low) ** chance.even() : chance.between(low, high);
  const registers = built.air.terminals.filter((t) => t.id.startsWith('reg-'));
  const register = registers[Math.floor(registers.length * chance.even())]?.id ?? '';
  const ofRun = kind === 'crushed-run' || kind === 'shut-damper' || kind === 'loose-run';
  if (kind === 'low-charge') {
    const [heat, draw] = [1 - chance.between(0.9, 1.3) * size, 1 - chance.between(0.3, 0.6) * size];
    const rows = built.unit.rows.map((r) => ({ ...r, capacity: r.capacity * heat, power: r.power * draw }));
    return { id: kind, system: { ...built, unit: { ...built.unit, rows } } };
  }
  return { id: ofRun ? `${kind}:${register}` : kind, system: faulty(built, kind, size, register) };
}

/** What is read of it with the methods' own errors: the part that repeating does not cure once a method. */
export function readFrom(
  table: ResponseTable,
  system: AsBuilt,
  ids: readonly string[],
  chance: Chance,
): Heard[] | undefined {
  const found = attempt(() => respond(system));
  if (!found.ok) return undefined;
  const fixed = new Map<string, number>();
  return ids.flatMap((id): Heard[] => {
    const channel = table.channels.findIndex((c) => c.id === id);
    const truth = found.value.find((r) => r.channel.id === id)?.value ?? 0;
    const group = table.channels[channel]?.group;
    if (!group) return [];
    const means = usualMeans[group];
    const { fixed: s, random: r, floor } = methods[means];
    const shared = fixed.get(means) ?? chance.normal();
    fixed.set(means, shared);
    const repeats = means === 'bag' || means === 'gauge' ? 3 : 1;
    const scale = group === 'temperature' ? 1 : truth;
    const value = truth + (s * shared + (r / Math.sqrt(repeats)) * chance.normal()) * scale + floor * chance.normal();
    return [{ channel, value, means, repeats, baseIn: false }];
  });
}
