import { type Entered, type FieldMeta, parseQuantity, type System } from '@kneewall/project';
import { formatRange, refusalWords, understood, unitLabel } from '@kneewall/project/quantity';

/** What one line says to one question. */
export type Answer =
  | { readonly kind: 'unknown' }
  | { readonly kind: 'value'; readonly value: unknown; readonly echo: string }
  /** Not taken; `readings` are what a number may choose from next. */
  | { readonly kind: 'again'; readonly say: readonly string[]; readonly readings?: readonly string[] };

const again = (...say: string[]): Answer => ({ kind: 'again', say });

/** The answers of a choice, each as stored and as said. */
export function optionsOf(meta: FieldMeta): readonly (readonly [stored: string | boolean, words: string])[] {
  if (meta.node === 'flag')
    return [
      [true, 'Yes'],
      [false, 'No'],
    ];
  return Object.entries(meta.options ?? {});
}

/** Reads a line as the answer to a field. Empty or `?` is "don't know". `readings` are those of the line before. */
export function readAnswer(line: string, meta: FieldMeta, units: System, readings: readonly string[] = []): Answer {
  const text = line.trim();
  if (text === '' || text === '?') return { kind: 'unknown' };
  if (meta.node !== 'quantity') return chosen(text, meta);
  return quantity(readings[Number(text) - 1] ?? text, meta, units);
}

/** By its number, or by a word that only one answer begins with. */
function chosen(text: string, meta: FieldMeta): Answer {
  const options = optionsOf(meta);
  const word = text.toLowerCase();
  const named = ([stored, words]: (typeof options)[number]) => [words.toLowerCase(), String(stored).toLowerCase()];
  const whole = options.filter((o) => named(o).includes(word));
  const begun = options.filter((o) => named(o).some((n) => n.startsWith(word)));
  const byNumber = /^\d+$/.test(text) ? options[Number(text) - 1] : undefined;
  const found = byNumber ?? whole[0] ?? (begun.length === 1 ? begun[0] : undefined);
  if (found) return { kind: 'value', value: found[0], echo: found[1] };
  if (begun.length > 1) return again(`That may be ${begun.map((o) => `“${o[1]}”`).join(' or ')}. Give its number.`);
  return again(
    `“${text.slice(0, 60)}” is none of the answers. Give a number from 1 to ${options.length}, or ? for “don’t know”.`,
  );
}

function quantity(text: string, meta: FieldMeta, units: System): Answer {
  const kind = meta.kind ?? 'number';
  const unit = unitLabel(kind, units);
  const parsed = parseQuantity(text, kind, unit === '' || unit === 'ft in' ? {} : { bareUnit: unit });
  if (!parsed.ok) {
    const { readings = [] } = parsed;
    if (parsed.code !== 'ambiguous' || readings.length === 0)
      return again(refusalWords(text.slice(0, 60), parsed, kind));
    const listed = readings.map((r, i) => `  ${i + 1}  ${r.text}: ${understood(r.value, kind)}`);
    return {
      kind: 'again',
      say: ['Which do you mean? Give its number.', ...listed],
      readings: readings.map((r) => r.text),
    };
  }
  const as = parsed.assumed ? `${text} ${parsed.assumed}` : text;
  const value: Entered = { value: parsed.value, known: meta.usually ?? 'estimated', as };
  return { kind: 'value', value, echo: `${parsed.understood}${oddly(parsed.value, meta, units)}` };
}

/** Kept and asked about, as everywhere. */
function oddly(value: number, { plausible, kind }: FieldMeta, units: System): string {
  if (!plausible || !kind || (value >= plausible.min && value <= plausible.max)) return '';
  const usual = formatRange({ low: plausible.min, likely: plausible.min, high: plausible.max }, kind, units);
  return `. Kept, but look again: it is usually ${usual}. “back” asks it again.`;
}
