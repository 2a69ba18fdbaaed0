import type { SizingSpec } from '../../src/air/sizing/spec.ts';

/** A choice as option places, µPa of the hardest ways, and whole cost. */
export type Tried = { readonly choice: readonly number[]; readonly pressure: number; readonly cost: number };

const micro = (pascals: number) => Math.round(pascals * 1e6);

/** µPa along the way to each place, from the air handler: every way is written out, none is shared. */
function ways(spec: SizingSpec, side: 'supply' | 'return'): { through: number[]; end: number }[] {
  const { sections } = spec;
  return sections.flatMap((s, i) => {
    if (s.side !== side) return [];
    const through = [i];
    for (let at = s; at.from !== undefined; ) {
      const k = sections.findIndex((x) => x.id === at.from);
      through.push(k);
      at = sections[k] ?? at;
    }
    return [{ through, end: micro(s.end) }];
  });
}

/** Every choice of options that break no limit, tried one by one. */
export function everyChoice(spec: SizingSpec): Tried[] {
  const lists = spec.sections.map((s) =>
    s.options.flatMap((o, k) => (s.fixed || !o.breaks || o.breaks.length === 0 ? [k] : [])),
  );
  const [supply, back] = [ways(spec, 'supply'), ways(spec, 'return')];
  const loss = spec.sections.map((s) => s.options.map((o) => micro(o.loss)));
  const cost = spec.sections.map((s) =>
    s.options.map((o) => (spec.goal === 'labour' ? Math.round(o.labour) : Math.round(o.money * 100))),
  );
  const tried: Tried[] = [];
  const choice = spec.sections.map(() => 0);
  const worst = (list: typeof supply) =>
    list.reduce(
      (a, w) =>
        Math.max(
          a,
          w.through.reduce((b, i) => b + (loss[i]?.[choice[i] ?? 0] ?? 0), w.end),
        ),
      0,
    );
  const visit = (i: number): void => {
    if (i === spec.sections.length) {
      const sum = choice.reduce((a, k, j) => a + (cost[j]?.[k] ?? 0), 0);
      tried.push({ choice: [...choice], pressure: worst(supply) + worst(back), cost: sum });
      return;
    }
    for (const k of lists[i] ?? []) {
      choice[i] = k;
      visit(i + 1);
    }
  };
  visit(0);
  return tried;
}
