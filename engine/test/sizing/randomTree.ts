import type { SizingOption, SizingSection, SizingSpec } from '../../src/air/sizing/spec.ts';

/** A small repeatable generator (mulberry32): numbers from 0 to 1. */
export function numbersFrom(seed: number): () => number {
  let a = seed >>> 0;
  return () => {
    a = (a + 0x6d2b79f5) >>> 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** Two random trees; larger sizes lose less and mostly cost more, some options are plainly worse, some equal. */
export function randomSpec(
  seed: number,
  { sections: n, options, coarse = false }: { sections: number; options: number; coarse?: boolean },
): SizingSpec {
  const next = numbersFrom(seed);
  const upTo = (k: number) => Math.floor(next() * k);
  const loss = (x: number) => (coarse ? Math.max(1, Math.round(x)) : x);
  const optionAt = (base: number, size: number): SizingOption => ({
    id: `size-${size}`,
    loss: loss(base / (1 + size) ** (1.5 + next())),
    money: Math.round(100 * (4 + 6 * size * (0.6 + next()))) / 100,
    labour: 60 * (10 + 3 * size + upTo(5)),
    ...(next() < 0.1 && size > 0 ? { breaks: [{ limit: 'depth', value: 0.2 + 0.05 * size, most: 0.2 }] } : {}),
  });
  const sections: SizingSection[] = [];
  for (let i = 0; i < n; i++) {
    const side = i > 0 && next() < 0.75 ? 'supply' : i === 0 ? 'supply' : 'return';
    const same = sections.filter((s) => s.side === side);
    const from = same.length > 0 && next() < 0.8 ? same[upTo(same.length)]?.id : undefined;
    const base = 5 + 40 * next();
    const count = 1 + upTo(options);
    const list = Array.from({ length: count }, (_, k) => optionAt(base, k));
    const fixed = next() < 0.1;
    const kept = fixed ? list.slice(0, 1) : list;
    if (next() < 0.15 && kept[0] && !fixed) kept.push({ ...kept[0], id: 'twin' });
    const section = { id: `s${i}`, side, end: next() < 0.5 ? loss(10 * next()) : 0, options: kept } as const;
    sections.push({ ...section, ...(from ? { from } : {}), ...(fixed ? { fixed } : {}) });
  }
  const budget = loss((coarse ? 60 : 20) + (n + 8) * 3 * next());
  return { sections, budget, goal: next() < 0.7 ? 'money' : next() < 0.5 ? 'labour' : 'static' };
}
