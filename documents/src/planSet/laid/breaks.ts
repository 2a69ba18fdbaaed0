/// <reference path="./linebreak.d.ts" />
import LineBreaker from 'linebreak';

/** A part of a text that stays together, blanks behind it included; `ends`: the line ends with it whatever its length. */
export type Part = { readonly text: string; readonly ends: boolean };

/**
 * A text in the parts between which a line may be broken (UAX 14, by a general library, but never behind a stroke). Plain
 * texts go by pairs: whether there may be a break between two plain signs, blanks between them or not, hangs on nothing
 * else, and is asked once.
 */
export function partsOf(text: string): Part[] {
  if (text === '') return [{ text, ends: false }];
  const parts: Part[] = [];
  let start = 0;
  for (const end of plain.test(text) ? pairEnds(text) : libraryEnds(text)) {
    // A unit is not parted from what it is a share of: Btu/h.
    if (text.charAt(end - 1) === '/' && end < text.length) continue;
    const part = text.slice(start, end);
    const ends = /[\r\n]$/.test(part);
    parts.push({ text: ends ? part.replace(/\r?\n$|\r$/, '') : part, ends });
    start = end;
  }
  return parts;
}

/** Signs that neither join their neighbours nor take part in any rule of more than two. */
const plain = /^[\n -~\u00a0°²³·×½¼¾µÅÉé–—‘’“”…′″ΔΣΦαβηλρτ≤≥→☐✓✗△⌀]+$/;

function libraryEnds(text: string): number[] {
  const breaker = new LineBreaker(text);
  const ends: number[] = [];
  for (let next = breaker.nextBreak(); next; next = breaker.nextBreak()) ends.push(next.position);
  return ends;
}

function pairEnds(text: string): number[] {
  const ends: number[] = [];
  let before = '';
  for (let i = 0; i < text.length; i++) {
    const sign = text.charAt(i);
    if (sign === '\n') {
      ends.push(i + 1);
      before = '';
    } else if (sign !== ' ') {
      const blank = i > 0 && text.charAt(i - 1) === ' ' ? ' ' : '';
      if (before + blank !== '' && parted(before + blank, sign)) ends.push(i);
      before = sign;
    }
  }
  if (ends.at(-1) !== text.length) ends.push(text.length);
  return ends;
}

const known = new Map<string, Map<string, boolean>>();

/** Whether a line may be broken between a sign, with or without a blank behind it, and the next. */
function parted(before: string, sign: string): boolean {
  const row = known.get(before) ?? new Map<string, boolean>();
  known.set(before, row);
  const may = row.get(sign) ?? libraryEnds(before + sign)[0] === before.length;
  row.set(sign, may);
  return may;
}
