import { parseQuantity, type QuantityKind } from '@kneewall/project';

/** Words for a pack, in small letters, one or several of it. */
const pack =
  '(?:each|piece|pc|bag|box|roll|reel|coil|spool|sheet|board|length|stick|tub|pail|tube|cartridge|can|pack|bundle|pair|set|bottle)';
const packs = new RegExp(`\\b(?:${pack}(?:e?s)?|per|of|a|an|the)\\b\\.?|^/`, 'gi');
const sides = /^([\d.]+)\s*(?:[x×]|by)\s*([\d.]+)\s*(\S+)$/i;

/**
 * How much a pack holds that is sold as `unit`, in the unit of `kind`: `25 ft bag`, `box of 100`, `4 x 8 ft sheet`, `ft`,
 * `each`. A pack alone is the usual one. Nothing where the words are not understood, or hold nothing.
 */
export function soldIn(unit: string, kind: QuantityKind, usual: number): number | undefined {
  const left = unit.replaceAll(packs, ' ').trim();
  if (left === '') return usual > 0 ? usual : undefined;
  const [, a, b, by] = (kind === 'area' && sides.exec(left)) || [];
  const held =
    a !== undefined && b !== undefined ? lengthOf(`${a} ${by}`) * lengthOf(`${b} ${by}`) : measureOf(left, kind);
  return held > 0 ? held : undefined;
}

const lengthOf = (text: string): number => measureOf(text, 'length');

function measureOf(text: string, kind: QuantityKind): number {
  const parsed = parseQuantity(/^\d/.test(text) ? text : `1 ${text}`, kind);
  return parsed.ok ? parsed.value : 0;
}

/**
 * An amount as a person wrote it: `25 ft`, `3`, `2 bags`. A number alone, or with a word for a pack, is pieces of `piece`
 * where the thing is measured; single things are counted, and packs of them multiplied. Nothing where it is not understood.
 */
export function amountIn(text: string, kind: QuantityKind, piece: number): number | undefined {
  const written = text.trim();
  const packed = new RegExp(`^(\\d+(?:[.,]\\d+)?)\\s*(${pack}(?:e?s)?)?$`, 'i').exec(written);
  if (packed) {
    const n = Number((packed[1] ?? '').replace(',', '.'));
    const single = kind === 'count' && (packed[2] === undefined || /^(each|piece|pc)/i.test(packed[2]));
    if (single) return n;
    return piece > 0 ? n * piece : undefined;
  }
  const parsed = parseQuantity(written, kind);
  return parsed.ok && parsed.value >= 0 ? parsed.value : undefined;
}
