import type { Laid, Place, PutIn } from 'pdfmake/build/pdfmake.js';

/**
 * Lets a font of the printing library lay out plain words from pairs of letters: it looks up all rules of the font for
 * every word, though a word of plain letters is its letters side by side, each as far from the next as the two ask for.
 * A word with a pair that melts into one picture, or with any other sign, is laid out by the library. What comes out is
 * the same to the bit. Source of the rules: the font's own tables, read by the library, a pair at a time.
 */
export function quickFont(font: PutIn): void {
  const kind = Object.getPrototypeOf(font) as PutIn & { quick?: true };
  if (kind.quick) return;
  kind.quick = true;
  const lay = kind.layoutRun;
  const pairs = new WeakMap<PutIn, (text: string) => Laid | undefined>();
  kind.layoutRun = function (text, features) {
    if (features || text.length < 3 || !plain.test(text)) return lay.call(this, text, features);
    const known = pairs.get(this) ?? fromPairs(this);
    pairs.set(this, known);
    return known(text) ?? lay.call(this, text);
  };
}

/** Signs that stand beside each other as they are. Words without a letter follow other rules, and are left alone. */
const plain = /^(?=.*[A-Za-z])[ -~]+$/;

/** One letter of a word, as far as the next asks for; `apart` is false where the two are not simply side by side. */
type Step = { readonly glyph: unknown; readonly place: Place; readonly apart: boolean };

/** Lays a word out from its pairs; nothing where one of them is not two letters side by side. */
function fromPairs(font: PutIn): (text: string) => Laid | undefined {
  const steps = new Map<string, Step>();
  const stepOf = (pair: string): Step => {
    const known = steps.get(pair);
    if (known) return known;
    const { glyphs, positions } = scaled(font, pair);
    const [place, next] = positions;
    const alone = pair.length === 2 ? stepOf(pair.charAt(1)).place : undefined;
    if (!place) throw new Error('assert: a letter has a place');
    const apart =
      glyphs.length === pair.length &&
      onLine(place) &&
      (pair.length === 1 ||
        (next !== undefined && alone !== undefined && onLine(next) && next.xAdvance === alone.xAdvance));
    const step = { glyph: glyphs[0], place, apart };
    steps.set(pair, step);
    return step;
  };
  return (text) => {
    const glyphs: unknown[] = [];
    const positions: Place[] = [];
    let advanceWidth = 0;
    for (let i = 0; i < text.length; i++) {
      const { glyph, place, apart } = stepOf(text.slice(i, i + 2));
      if (!apart) return undefined;
      glyphs.push(glyph);
      positions.push(place);
      advanceWidth += place.xAdvance;
    }
    return { glyphs: glyphs as Laid['glyphs'], positions, advanceWidth };
  };
}

const onLine = ({ xOffset, yOffset, yAdvance }: Place): boolean => xOffset === 0 && yOffset === 0 && yAdvance === 0;

/** The library's own lay-out of a letter or two by the rules of latin words, in thousandths of the letter's size. */
function scaled(font: PutIn, text: string): Laid {
  const run = font.font.layout(text, undefined, 'latn');
  run.positions.forEach((place, i) => {
    for (const key of ['xAdvance', 'yAdvance', 'xOffset', 'yOffset'] as const) place[key] *= font.scale;
    place.advanceWidth = (run.glyphs[i]?.advanceWidth ?? 0) * font.scale;
  });
  return run;
}
