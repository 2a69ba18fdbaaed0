import bidiFactory from 'bidi-js';

const bidi = bidiFactory();

/** Hebrew, Arabic and their kin, and the marks that turn the direction of writing. */
const rightToLeft = /[\u0590-\u08ff\u200f\u202b\u202e\u2067\ufb1d-\ufdff\ufe70-\ufeff]/;
/** Marks that only steer direction or join signs, which nothing is drawn for. */
const unseen = /\u200b|\u200c|\u200d|\u200e|\u200f|[\u202a-\u202e]|[\u2060-\u2069]|[\ufe00-\ufe0f]|\ufeff/gu;

/**
 * A text as it can be printed: every sign that the font has no picture of becomes its number, ⟨U+1F3E0⟩, so that
 * nothing vanishes without being seen; marks without a picture of their own go.
 */
export function printable(text: string, has: (codePoint: number) => boolean): string {
  let shown = '';
  for (const sign of text.normalize('NFC').replace(unseen, '')) {
    const code = sign.codePointAt(0) ?? 0;
    if (sign === '\n' || sign === '\u202f' || has(code)) shown += sign;
    else shown += `⟨U+${code.toString(16).toUpperCase().padStart(4, '0')}⟩`;
  }
  // A font's narrow blank is often missing; the plain unbroken one parts number and unit as well.
  return shown.replaceAll('\u202f', '\u00a0');
}

/**
 * The pieces of a text from left to right as they stand on paper, by the Unicode rules for mixed directions (UAX 9).
 * Signs inside a piece stay in the order in which they are read: the printing library turns and joins them itself.
 * A text without right-to-left letters is one piece. Lines of it must not be broken: the order would be wrong.
 */
export function leftToRight(text: string): string[] {
  if (!rightToLeft.test(text)) return [text];
  const { levels } = bidi.getEmbeddingLevels(text);
  const pieces: { text: string; level: number }[] = [];
  for (let i = 0; i < text.length; i++) {
    const level = levels[i] ?? 0;
    const sign = text[i] ?? '';
    const last = pieces.at(-1);
    const blank = /\s/.test(sign) || /\s$/.test(last?.text ?? '');
    const low = sign >= '\udc00' && sign <= '\udfff';
    if (last && (low || (last.level === level && !blank))) last.text += sign;
    else pieces.push({ text: sign, level });
  }
  const top = Math.max(...pieces.map((p) => p.level));
  for (let level = top; level > 0; level--) turnRuns(pieces, level);
  return pieces.map((p) => p.text);
}

/** Rule L2: every run of pieces at a level or above is turned round. */
function turnRuns<T extends { level: number }>(pieces: T[], level: number): void {
  let start = 0;
  while (start < pieces.length) {
    if ((pieces[start]?.level ?? 0) < level) {
      start++;
      continue;
    }
    let end = start;
    while (end < pieces.length && (pieces[end]?.level ?? 0) >= level) end++;
    pieces.splice(start, end - start, ...pieces.slice(start, end).reverse());
    start = end;
  }
}
