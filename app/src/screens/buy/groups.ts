import { holdPointTitle, holdPointWords, type ListLine, shopTitle, tradeTitle } from '@kneewall/engine';
import type { Range } from '@kneewall/project';

export const ways = { when: 'When', shop: 'Shop', trade: 'Trade' } as const;
export type Way = keyof typeof ways;
type Group = { readonly key: string; readonly title: string; readonly lines: readonly ListLine[] };

/** Lines by when they must be there, where they are bought, or which trade asks for them first; groups without any are left out. */
export function groupsOf(lines: readonly ListLine[], way: Way): Group[] {
  if (way === 'when')
    return holdPointWords
      .map((by) => ({
        key: by,
        title: `Before “${holdPointTitle[by].title}”`,
        lines: lines.filter((l) => l.by === by),
      }))
      .filter((g) => g.lines.length > 0);
  const keyOf = (l: ListLine): string => (way === 'shop' ? l.shop : (l.from[0]?.trade ?? 'materials'));
  const titles: Readonly<Record<string, string>> =
    way === 'shop' ? shopTitle : { ...tradeTitle, materials: 'Joining and fixing' };
  return [...new Set(lines.map(keyOf))].map((key) => ({
    key,
    title: titles[key] ?? key,
    lines: lines.filter((l) => keyOf(l) === key),
  }));
}

type Sums = { readonly things: number; readonly open: number; readonly unpriced: number; readonly cost?: Range };

/** Counts and money of some lines; no money where none of them has a price. */
export function groupSums(lines: readonly ListLine[]): Sums {
  const costs = lines.flatMap((l) => (l.cost ? [l.cost] : []));
  const sum = (end: keyof Range): number => costs.reduce((a, c) => a + c[end], 0);
  return {
    things: lines.length,
    open: lines.filter((l) => l.open > 0).length,
    unpriced: lines.length - costs.length,
    ...(costs.length > 0 ? { cost: { low: sum('low'), likely: sum('likely'), high: sum('high') } } : {}),
  };
}

/** The lines that have every word typed, in their own words, those of what they are for, their shop or trade. */
export function linesWith(lines: readonly ListLine[], typed: string): readonly ListLine[] {
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  return lines.filter((l) => {
    const said = [l.what, shopTitle[l.shop], ...l.from.flatMap((f) => [f.what, tradeTitle[f.trade]])]
      .join(' ')
      .toLowerCase();
    return words.every((w) => said.includes(w));
  });
}
