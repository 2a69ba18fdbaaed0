import type { Parsed } from './parse.ts';

/** Why a text was not taken as a quantity, in words. For one that may mean two things, the two are to be shown instead. */
export function refusalWords(text: string, parsed: Exclude<Parsed, { readonly ok: true }>): string {
  if (parsed.code === 'wrong-kind') return `“${text.slice(parsed.at)}” is a unit of something else.`;
  if (parsed.at > 0) return `Understood up to “${text.slice(0, parsed.at)}”, not “${text.slice(parsed.at)}”.`;
  return `“${text}” is not understood.`;
}
