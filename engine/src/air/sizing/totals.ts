import { type CompiledSizing, compileSizing, perPascal } from './compile.ts';
import { leastOf } from './least.ts';
import type { SizedSystem, SizingChoice, SizingSection, SizingSpec, SizingTotals } from './spec.ts';

/** µPa along the hardest supply way and return way together, with the sizes as chosen. */
export function pressureOf(c: CompiledSizing, choice: readonly number[]): number {
  const { supply, return: back } = leastOf(c, (i) => c.loss[i]?.[choice[i] ?? 0] ?? 0);
  return supply + back;
}

export function totalsOf(c: CompiledSizing, choice: readonly number[]): SizingTotals {
  const cents = (key: 'money' | 'labour', scale: number) =>
    c.sections.reduce((a, s, i) => a + Math.round((s.options[choice[i] ?? 0]?.[key] ?? 0) * scale), 0) / scale;
  return { pressure: pressureOf(c, choice) / perPascal, money: cents('money', 100), labour: cents('labour', 1) };
}

export const systemOf = (c: CompiledSizing, choice: readonly number[]): SizedSystem => ({
  choice: namesOf(c, choice),
  totals: totalsOf(c, choice),
});

const namesOf = (c: CompiledSizing, choice: readonly number[]): SizingChoice =>
  Object.fromEntries(c.sections.map((s, i) => [s.id, s.options[choice[i] ?? 0]?.id ?? '']));

/** Totals of a system whose sections each have one option. */
export function totalsOfOnly(spec: SizingSpec, optionsOf: (section: string) => SizingSection['options']): SizingTotals {
  const c = compileSizing({ ...spec, sections: spec.sections.map((s) => ({ ...s, options: optionsOf(s.id) })) });
  return totalsOf(
    c,
    c.sections.map(() => 0),
  );
}
