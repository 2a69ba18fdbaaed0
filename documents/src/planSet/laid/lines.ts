import { type Inline, inlineOf, type Setter } from './inlines.ts';

/** A line of a paragraph; `x` of each word from its left end, without the blanks it begins with. */
export type Line = {
  readonly words: readonly { readonly x: number; readonly inline: Inline }[];
  /** Without the blanks at its ends. */
  readonly width: number;
  readonly height: number;
  /** From its top to the foot of its letters. */
  readonly ascent: number;
};

/** A paragraph in lines no wider than `width`; a word longer than a line is broken between letters. */
export function linesOf(inlines: readonly Inline[], width: number, setter: Setter): Line[] {
  const lines: Line[] = [];
  const waiting = [...inlines].reverse();
  while (waiting.length > 0) lines.push(nextLine(waiting, width, setter));
  return lines;
}

/** Takes the words of one line off the end of those waiting. */
function nextLine(waiting: Inline[], most: number, setter: Setter): Line {
  const words: { x: number; inline: Inline }[] = [];
  let lead = 0;
  let trail = 0;
  let all = 0;
  let forced = false;
  for (let next = waiting.at(-1); next; next = waiting.at(-1)) {
    const room = most - (all - lead - trail);
    if (words.length > 0 && !forced && !fits(waiting, most - (all - lead))) break;
    waiting.pop();
    let inline = next;
    if (!next.whole && next.word.text.length > 1 && next.width > room) {
      const [here, rest] = brokenAt(next, room, setter);
      if (rest) waiting.push(rest);
      inline = here;
      forced = rest === undefined && next.joined;
    } else forced = next.joined;
    if (words.length === 0) lead = inline.lead;
    trail = inline.trail;
    words.push({ x: all - lead, inline });
    all += inline.width;
    if (inline.ends) break;
  }
  return {
    words,
    width: all - lead - trail,
    height: Math.max(...words.map(({ inline }) => inline.height)),
    ascent: Math.max(...words.map(({ inline }) => inline.ascent)),
  };
}

/** Whether the next word, with all that hang on it, fits into so much room. */
function fits(waiting: readonly Inline[], room: number): boolean {
  let width = 0;
  for (let i = waiting.length - 1; i >= 0; i--) {
    const inline = waiting[i];
    if (!inline) break;
    width += inline.width - inline.trail;
    if (!inline.joined) break;
  }
  return width <= room;
}

/** A word as far as there is room, one letter at least, and the rest of it. */
function brokenAt(inline: Inline, room: number, setter: Setter): [Inline, Inline?] {
  const { word, size } = inline;
  const part = (from: number, to?: number) =>
    inlineOf(setter.face.word(word.text.slice(from, to), word.bold), size, setter);
  let [low, high] = [1, word.text.length];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (part(0, middle).width <= room) low = middle;
    else high = middle - 1;
  }
  if (low === word.text.length) return [inline];
  return [part(0, low), { ...part(low), joined: inline.joined, ends: inline.ends }];
}
