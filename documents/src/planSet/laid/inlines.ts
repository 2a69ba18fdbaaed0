import type { Words } from '../block.ts';
import { type Part, partsOf } from './breaks.ts';
import type { Typeface, Word } from './typeface.ts';

/** How letters look: size in points. */
export type Look = { readonly size: number; readonly bold: boolean; readonly white: boolean };

/** A word of a paragraph; widths in points, in its own size. */
export type Inline = {
  readonly word: Word;
  readonly size: number;
  readonly width: number;
  readonly lead: number;
  readonly trail: number;
  readonly height: number;
  readonly ascent: number;
  /** No break between it and the next. */
  readonly joined: boolean;
  readonly ends: boolean;
  /** Never broken, however long. */
  readonly whole: boolean;
};

/** Between the lines of a paragraph, of their height. */
const lineHeight = 1.15;

/** What paragraphs are made with: the font, and the pieces of a text from left to right as they print. */
export type Setter = { readonly face: Typeface; pieces(text: string): readonly string[] };

/** A paragraph in words. */
export function inlinesOf(words: Words, look: Look, setter: Setter): Inline[] {
  const inlines: Inline[] = [];
  let last = '';
  for (const { text, bold, whole } of runsOf(words, look.bold, setter)) {
    const parts: readonly Part[] = whole ? [{ text, ends: false }] : partsOf(text);
    const first = (whole ? partsOf(text)[0] : parts[0])?.text ?? '';
    const before = inlines.at(-1);
    if (before && last !== '' && partsOf(last + first).length === 1)
      inlines[inlines.length - 1] = { ...before, joined: true };
    for (const part of parts)
      inlines.push(inlineOf(setter.face.word(part.text, bold), look.size, setter, part.ends, whole));
    const end = parts.at(-1);
    last = !end || end.ends ? '' : whole ? (partsOf(text).at(-1)?.text ?? '') : end.text;
  }
  return inlines;
}

export function inlineOf(word: Word, size: number, { face }: Setter, ends = false, whole = false): Inline {
  const font = word.bold ? face.fonts.bold : face.fonts.normal;
  const scale = size / 1000;
  return {
    word,
    size,
    width: word.width * scale,
    lead: word.lead * scale,
    trail: word.trail * scale,
    height: (font.ascender - font.descender) * scale * lineHeight,
    ascent: font.ascender * scale,
    joined: false,
    ends,
    whole,
  };
}

type Run = { readonly text: string; readonly bold: boolean; readonly whole: boolean };

function runsOf(words: Words, bold: boolean, setter: Setter): Run[] {
  if (typeof words === 'string') {
    const pieces = setter.pieces(words);
    return pieces.map((text) => ({ text, bold, whole: pieces.length > 1 }));
  }
  if ('text' in words) return runsOf(words.text, words.bold ?? bold, setter);
  return words.flatMap((w) => runsOf(w, bold, setter));
}

/** The least width without breaking a word, and that of the longest line when nothing is broken. */
export function widthsOf(inlines: readonly Inline[]): { readonly least: number; readonly most: number } {
  let least = 0;
  let most = 0;
  let line: { width: number; lead: number } | undefined;
  for (const { width, lead, trail, ends } of inlines) {
    least = Math.max(least, width - lead - trail);
    line ??= { width: 0, lead };
    line.width += width;
    most = Math.max(most, line.width - line.lead - trail);
    if (ends) line = undefined;
  }
  return { least, most };
}
