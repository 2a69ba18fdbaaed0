import { kindOf, type QuantityKind } from './kinds.ts';
import type { Parsed } from './parse.ts';

/** Why a text was not taken, and what would be. For one that may mean two things, the two are to be shown instead. */
export function refusalWords(
  text: string,
  parsed: Exclude<Parsed, { readonly ok: true }>,
  kind: QuantityKind = 'number',
): string {
  return `${refusedBecause(text, parsed)} ${wanted(kind)}`;
}

function refusedBecause(text: string, parsed: Exclude<Parsed, { readonly ok: true }>): string {
  if (parsed.code === 'wrong-kind') return `“${text.slice(parsed.at)}” is a unit of something else.`;
  if (parsed.at > 0) return `Understood up to “${text.slice(0, parsed.at)}”, not “${text.slice(parsed.at)}”.`;
  return `“${text}” is not understood.`;
}

/** What may be written instead, by the units of the kind. */
function wanted(kind: QuantityKind): string {
  if (kind === 'count') return 'Write a whole number.';
  if (kind === 'time-of-day') return 'Write it like 17:30 or 5:30 pm.';
  if (kind === 'length') return `Write it like 5' 3 1/2", 63 in, 5.3 ft or 1.6 m.`;
  if (kind === 'wire-size') return 'Write it like 12 AWG or 4 mm².';
  const units = kindOf(kind)
    .units.map((u) => u.symbol)
    .filter((s) => s !== '');
  return units.length === 0
    ? 'Write a number.'
    : `Write a number in ${units.join(', ').replace(/, ([^,]*)$/, ' or $1')}.`;
}
