import { methods } from '../methods.ts';
import type { Means, Taken } from '../visit.ts';

/**
 * What a share may be off by for dampers to be set by it: 19 registers in 20 then lie within 15 %. Source:
 * `commissioning.balancing`.
 */
const shareErrorMost = 0.07;

/** The flows of a visit at the supply registers, and what they lack to balance by. */
export type FlowsRead = {
  /** m³/s by register. */
  readonly flows: Readonly<Record<string, number>>;
  /** Registers that were not read. */
  readonly lacking: readonly string[];
  /** A reading by another method than the others, one that shows hardly any air, one that was taken too few times. */
  readonly mixed?: string;
  readonly blocked?: { readonly reading: string; readonly register: string };
  readonly again?: { readonly reading: string; readonly times: number; readonly now: number };
  /** Shares by which all readings are off alike, and each alone. */
  readonly common: number;
  readonly alone: number;
};

/** Both expected readings of a register's flow. */
const flowIds = ['air/flow:', 'air/balanced:'];

/**
 * The registers' flows of a visit. Shares are what counts, so what a method is off by everywhere cancels; what each
 * reading is off by alone does not, and is cured by repeating. Undefined where fewer than two registers were read.
 */
export function flowsRead(taken: readonly Taken[], registers: readonly string[]): FlowsRead | undefined {
  const read = registers.map((register) => ({
    register,
    taken: taken.findLast((t) => flowIds.some((id) => t.expected === id + register)),
  }));
  const mine = read.flatMap((r) => (r.taken ? [{ register: r.register, ...r.taken }] : []));
  if (mine.length < 2) return undefined;
  const meansOf = (t: Taken): Means => t.means ?? 'bag';
  const means = mine[0] ? meansOf(mine[0]) : 'bag';
  const { random, fixed, floor } = methods[means];
  const repeats = Math.min(...mine.map((t) => t.repeats));
  const times = Math.ceil((random / shareErrorMost) ** 2 - 1e-9);
  const mixed = mine.find((t) => meansOf(t) !== means);
  const blocked = mine.find((t) => t.value <= 2 * floor);
  const few = mine.find((t) => t.repeats < times);
  return {
    flows: Object.fromEntries(mine.map((t) => [t.register, t.value])),
    lacking: read.flatMap((r) => (r.taken ? [] : [r.register])),
    ...(mixed ? { mixed: mixed.id } : {}),
    ...(blocked ? { blocked: { reading: blocked.id, register: blocked.register } } : {}),
    ...(few ? { again: { reading: few.id, times, now: few.repeats } } : {}),
    common: fixed,
    alone: random / Math.sqrt(repeats),
  };
}
