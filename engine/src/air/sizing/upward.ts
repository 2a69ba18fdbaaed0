import type { CompiledSizing } from './compile.ts';
import { added, type Front, joined, pointFront, sizeOf, within } from './front.ts';
import { type Least, leastOf } from './least.ts';

/** Exact fronts of every part of the system, from the registers to the air handler. */
export type Fronts = {
  /** Of all that hangs at a section's end, and of the section with it. */
  readonly below: readonly Front[];
  readonly own: readonly Front[];
  readonly supply: Front;
  readonly return: Front;
  /** Both sides added; its picks are places in the front of `picked`. */
  readonly system: Front;
  readonly picked: 'supply' | 'return';
};

/** Fronts known from before, and the sections to make anew. */
type Again = { readonly known: Fronts; readonly only: ReadonlySet<number> };

/**
 * Builds the fronts as far as `limit` (µPa for both sides together). Undefined where one step would take
 * more than `mostSums` sums of two points: a count, so that every machine gives up alike.
 */
export function frontsUpward(c: CompiledSizing, limit: number, mostSums: number, again?: Again): Fronts | undefined {
  const least = leastOf(c);
  const below: Front[] = [...(again?.known.below ?? [])];
  const own: Front[] = [...(again?.known.own ?? [])];
  for (const i of [...c.order].reverse()) {
    if (again && !again.only.has(i)) continue;
    const hanging = joined([
      pointFront(c.end[i] ?? 0, 0),
      ...(c.children[i] ?? []).map((j) => own[j] ?? pointFront(0, 0)),
    ]);
    const options = c.options[i] ?? pointFront(0, 0);
    if (sizeOf(hanging) * sizeOf(options) > mostSums) return undefined;
    below[i] = hanging;
    own[i] = added(options, hanging, limit - (least.before[i] ?? 0) - otherSide(c, least, i));
  }
  const side = (roots: readonly number[]) => joined(roots.map((i) => own[i] ?? pointFront(0, 0)));
  const [supply, back] = [side(c.roots.supply), side(c.roots.return)];
  if (sizeOf(supply) * sizeOf(back) > mostSums) return undefined;
  const picked = sizeOf(supply) < sizeOf(back) ? 'supply' : 'return';
  const system = picked === 'supply' ? added(supply, back, limit) : added(back, supply, limit);
  return { below, own, supply, return: back, system, picked };
}

const otherSide = (c: CompiledSizing, least: Least, i: number): number =>
  c.sections[i]?.side === 'supply' ? least.return : least.supply;

/** By section, the option at a point of the system's front. */
export function choiceAt(c: CompiledSizing, f: Fronts, point: number): number[] {
  const choice: number[] = c.sections.map(() => 0);
  const pick = f.system.pick[point] ?? 0;
  const first = f[f.picked].loss[pick] ?? 0;
  const rest = (f.system.loss[point] ?? 0) - first;
  const allowed = c.sections.map(() => 0);
  for (const i of c.roots.supply) allowed[i] = f.picked === 'supply' ? first : rest;
  for (const i of c.roots.return) allowed[i] = f.picked === 'return' ? first : rest;
  for (const i of c.order) {
    const [own, options] = [f.own[i], c.options[i]];
    if (!own || !options) continue;
    const k = within(own, allowed[i] ?? 0);
    const o = own.pick[k] ?? 0;
    choice[i] = options.pick[o] ?? 0;
    for (const j of c.children[i] ?? []) allowed[j] = (own.loss[k] ?? 0) - (options.loss[o] ?? 0);
  }
  return choice;
}
