import type { PutIn } from 'pdfmake/build/pdfmake.js';

/** A word as its font draws it; widths in thousandths of the letters' size. */
export type Word = {
  readonly text: string;
  readonly bold: boolean;
  readonly width: number;
  /** How much of the width are blanks before and after it. */
  readonly lead: number;
  readonly trail: number;
  /** Its pictures as the file writes them; nothing where one stands off the line, which the library has to place. */
  readonly shown: string | undefined;
};

/** The set's font, upright and bold. Each word is laid out once, whatever its size and however often it stands there. */
export type Typeface = {
  readonly fonts: { readonly normal: PutIn; readonly bold: PutIn };
  word(text: string, bold: boolean): Word;
};

export function typefaceOf(normal: PutIn, bold: PutIn): Typeface {
  const known = { normal: new Map<string, Word>(), bold: new Map<string, Word>() };
  return {
    fonts: { normal, bold },
    word: (text, heavy) => {
      const words = heavy ? known.bold : known.normal;
      const there = words.get(text);
      if (there) return there;
      const made = wordOf(heavy ? bold : normal, text, heavy);
      words.set(text, made);
      return made;
    },
  };
}

const leading = /^\s+/;
const trailing = /\s+$/;

function wordOf(font: PutIn, text: string, bold: boolean): Word {
  const [pictures, places] = font.encode(text);
  const blanks = (part: RegExp): number => {
    const found = part.exec(text);
    return found ? font.layout(found[0], undefined, true).advanceWidth : 0;
  };
  let shown = '<';
  let off = false;
  let width = 0;
  places.forEach((place, i) => {
    shown += pictures[i];
    const further = place.xAdvance - place.advanceWidth;
    if (further !== 0) shown += `>${thousandths(-further)}<`;
    if (place.xOffset !== 0 || place.yOffset !== 0) off = true;
    width += place.xAdvance;
  });
  return { text, bold, width, lead: blanks(leading), trail: blanks(trailing), shown: off ? undefined : `${shown}>` };
}

/** A number as the file has it. */
export const thousandths = (n: number): string => String(Math.round(n * 1000) / 1000);
