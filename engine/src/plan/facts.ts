import type { Judged } from './judge.ts';

/** What a finding carries by a name beside its value: a number, 0 where it carries none; or words, empty where it carries none. */
export const numberIn = (j: Judged, name: string): number => Number(j.facts?.[name] ?? 0);
export const wordsIn = (j: Judged, name: string): string => String(j.facts?.[name] ?? '');
