import type { Laid, Place, PutIn } from 'pdfmake/build/pdfmake.js';

/**
 * Lets a font of the printing library lay out plain words from pairs of letters: it looks up all rules of the font for
 * every word, though a plain word is its signs side by side, each as far from the next as the two ask for. The pairs of
 * `texts` are laid out by the library in one go, others with the first word they stand in. Pairs that melt into one picture
 * are never known, so that the library lays out their words, and those with any but plain signs. What comes out is the
 * same to the bit. Source of the rules: the font's own tables, read by the library.
 */
export function quickFont(font: PutIn, texts: string): void {
  const kind = Object.getPrototypeOf(font) as PutIn & { slow?: PutIn['layoutRun'] };
  const lay = kind.slow ?? kind.layoutRun;
  if (!kind.slow) {
    kind.slow = lay;
    kind.layoutRun = function (text, features) {
      if (features || !plain.test(text)) return lay.call(this, text, features);
      const met = stepsOf(this)[kindOf(text)];
      const laid = fromSteps(text, met);
      if (laid) return laid;
      const whole = lay.call(this, text);
      learn(whole, met);
      return whole;
    };
  }
  const pairs = pairsOf(texts);
  for (const [of, apart] of Object.entries(pairs) as [keyof Steps, string][])
    if (apart !== '') learn(lay.call(font, apart), stepsOf(font)[of]);
}

/** Words without a letter follow other rules. */
const kindOf = (text: string): keyof Steps => (/[A-Za-z]/.test(text) ? 'latin' : 'common');

/** Signs that stand beside each other as they are. */
const plain = /^[ -~\u00a0°²³·×½¼¾–—‘’“”…′″≤≥→☐✓✗△⌀]+$/;

const known = new WeakMap<PutIn, Steps>();

function stepsOf(font: PutIn): Steps {
  const steps = known.get(font) ?? { latin: new Map(), common: new Map() };
  known.set(font, steps);
  return steps;
}

/** Every two signs that stand side by side in a text, with blanks between them; those without a letter twice. */
function pairsOf(texts: string): Record<keyof Steps, string> {
  const met = new Set<number>();
  for (let i = 1; i < texts.length; i++) met.add(texts.charCodeAt(i - 1) * 65536 + texts.charCodeAt(i));
  const pairs = [...met].map((two) => String.fromCharCode(two >> 16, two & 65535)).filter((two) => plain.test(two));
  return { latin: pairs.join(' '), common: pairs.filter((two) => kindOf(two) === 'common').join(' ') };
}

/** The picture of a sign, and how far it goes before a certain other; or last of all. */
type Step = { readonly glyph: Laid['glyphs'][number]; readonly place: Place };
type Pairs = Map<string, Step>;
type Steps = { readonly latin: Pairs; readonly common: Pairs };

/** A word from what is known; nothing where a pair of it is not. */
function fromSteps(text: string, met: Pairs): Laid | undefined {
  const glyphs: Step['glyph'][] = [];
  const positions: Place[] = [];
  let advanceWidth = 0;
  for (let i = 0; i < text.length; i++) {
    const step = met.get(text.slice(i, i + 2));
    if (!step) return undefined;
    glyphs.push(step.glyph);
    positions.push(step.place);
    advanceWidth += step.place.xAdvance;
  }
  return { glyphs, positions, advanceWidth };
}

/** Keeps the pairs of what the library laid out, and each sign as the last of a word. Signs that melt with others teach nothing. */
function learn({ glyphs, positions }: Laid, met: Pairs): void {
  if (!positions.every(onLine)) return;
  const signs = glyphs.map((g) => (g.codePoints.length === 1 ? String.fromCodePoint(...g.codePoints) : ''));
  glyphs.forEach((glyph, i) => {
    const place = positions[i];
    const [sign, next] = [signs[i] ?? '', signs[i + 1] ?? ''];
    if (!place || sign === '') return;
    const { advanceWidth } = place;
    if (!met.has(sign)) met.set(sign, { glyph, place: { ...place, xAdvance: advanceWidth } });
    if (next !== '' && !met.has(sign + next)) met.set(sign + next, { glyph, place });
  });
}

const onLine = ({ xOffset, yOffset, yAdvance }: Place): boolean => xOffset === 0 && yOffset === 0 && yAdvance === 0;
