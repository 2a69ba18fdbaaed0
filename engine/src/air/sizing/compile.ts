import { type Front, frontOf } from './front.ts';
import type { SizingOption, SizingSection, SizingSpec } from './spec.ts';

/**
 * Pressures are counted in whole micropascals and costs in whole cents or seconds: sums are exact in whatever order
 * they are made, and every method and every machine finds the same choice.
 */
export const perPascal = 1e6;
const perCurrency = 100;

export type CompiledSizing = {
  readonly spec: SizingSpec;
  readonly sections: readonly SizingSection[];
  /** Places of the sections, those nearer the air handler first. */
  readonly order: readonly number[];
  readonly parent: readonly number[];
  readonly children: readonly (readonly number[])[];
  readonly roots: { readonly supply: readonly number[]; readonly return: readonly number[] };
  readonly end: readonly number[];
  /** By section and option, usable or not. */
  readonly loss: readonly (readonly number[])[];
  readonly cost: readonly (readonly number[])[];
  /** Places of the options that break no limit, and those among them that another does not beat in both. */
  readonly usable: readonly (readonly number[])[];
  readonly options: readonly Front[];
  readonly budget: number;
};

/** Cost of an option in the goal's whole unit: cents, or seconds. The least static is bought with least money. */
const costOf = (o: SizingOption, goal: SizingSpec['goal']): number =>
  goal === 'labour' ? Math.round(o.labour) : Math.round(o.money * perCurrency);

/** Whole cost in currency or seconds again. */
export const costShown = (cost: number, goal: SizingSpec['goal']): number =>
  goal === 'labour' ? cost : cost / perCurrency;

/** Lays two trees out. What makes no tree, or no number, is the caller's fault and throws: people's input is checked before. */
export function compileSizing(spec: SizingSpec): CompiledSizing {
  const { sections, goal } = spec;
  const place = new Map(sections.map((s, i) => [s.id, i]));
  if (place.size < sections.length) throw new Error('assert: two sections of one name');
  const parent = sections.map((s) => parentOf(s, place, sections));
  const children: number[][] = sections.map(() => []);
  parent.forEach((p, i) => {
    if (p >= 0) children[p]?.push(i);
  });
  const roots = (side: SizingSection['side']) =>
    sections.flatMap((s, i) => (parent[i] === -1 && s.side === side ? [i] : []));
  const starts = { supply: roots('supply'), return: roots('return') };
  const loss = sections.map((s) => s.options.map((o) => whole(o.loss * perPascal, s.id)));
  const cost = sections.map((s) => s.options.map((o) => whole(costOf(o, goal), s.id)));
  const usable = sections.map((s) => s.options.flatMap((o, k) => (isUsable(s, o, k) ? [k] : [])));
  return {
    spec,
    sections,
    order: outward([...starts.supply, ...starts.return], children, sections.length),
    parent,
    children,
    roots: starts,
    end: sections.map((s) => whole(s.end * perPascal, s.id)),
    loss,
    cost,
    usable,
    options: usable.map((list, i) =>
      frontOf(list.map((k) => ({ loss: loss[i]?.[k] ?? 0, cost: cost[i]?.[k] ?? 0, pick: k }))),
    ),
    budget: Math.floor(spec.budget * perPascal + 0.5),
  };
}

const isUsable = (s: SizingSection, o: SizingOption, k: number): boolean =>
  s.fixed ? k === 0 : (o.breaks ?? []).length === 0;

function whole(x: number, id: string): number {
  const n = Math.round(x);
  if (!(n >= 0 && n < 1e15)) throw new Error(`assert: section ${id} has a loss or cost of ${x}`);
  return n;
}

function parentOf(s: SizingSection, place: ReadonlyMap<string, number>, sections: readonly SizingSection[]): number {
  if (s.from === undefined) return -1;
  const p = place.get(s.from);
  if (p === undefined || sections[p]?.side !== s.side) throw new Error(`assert: section ${s.id} hangs at nothing`);
  return p;
}

function outward(roots: readonly number[], children: readonly (readonly number[])[], n: number): number[] {
  const order = [...roots];
  for (let k = 0; k < order.length; k++) order.push(...(children[order[k] ?? 0] ?? []));
  if (order.length < n) throw new Error('assert: sections in a circle');
  return order;
}
