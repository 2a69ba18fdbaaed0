import {
  type Entered,
  type Known,
  parseQuantity,
  printQuantity,
  type QuantityKind,
  type Range,
  type System,
} from '@kneewall/project';
import { formatRange, refusalWords, understood, unitLabel } from '@kneewall/project/quantity';

/** What the box says for one number, for low, likely and high, or nothing. */
export type Texts = { readonly likely: string; readonly low?: string; readonly high?: string };

export type Understood =
  | { readonly state: 'empty' }
  | { readonly state: 'understood'; readonly value: number | Range; readonly echo: string; readonly as: string }
  | {
      readonly state: 'ambiguous';
      readonly at: keyof Texts;
      readonly readings: readonly { text: string; echo: string }[];
    }
  | { readonly state: 'refused'; readonly at: keyof Texts; readonly words: string };

/** The unit printed in the box, which a bare number then means; none where the box shows feet and inches. */
export const boxUnit = (kind: QuantityKind, system: System): string => unitLabel(kind, system);

const options = (kind: QuantityKind, system: System) => {
  const unit = boxUnit(kind, system);
  return unit === '' || unit === 'ft in' ? {} : { bareUnit: unit };
};

/** A number or a range in both systems. */
export function echoed(value: number | Range, kind: QuantityKind): string {
  if (typeof value === 'number') return understood(value, kind);
  const [us, si] = [formatRange(value, kind, 'us'), formatRange(value, kind, 'si')];
  return us === si ? us : `${us} · ${si}`;
}

/** A value as it stands in the box: without the unit that the box itself shows. */
export function boxText(value: number, kind: QuantityKind, system: System): string {
  const text = printQuantity(value, kind, system, { inputForm: true });
  const unit = boxUnit(kind, system);
  return unit !== '' && text.endsWith(unit) ? text.slice(0, -unit.length).trim() : text;
}

export const boxTexts = (entered: Entered | undefined, kind: QuantityKind, system: System): Texts => {
  if (!entered) return { likely: '' };
  const { value } = entered;
  if (typeof value === 'number') return { likely: boxText(value, kind, system) };
  const { low, likely, high } = value;
  return { low: boxText(low, kind, system), likely: boxText(likely, kind, system), high: boxText(high, kind, system) };
};

/** Reads the box. The whole of every text has to be understood; two sane meanings are handed back to choose from. */
export function understand(texts: Texts, kind: QuantityKind, system: System): Understood {
  const keys = (['low', 'likely', 'high'] as const).filter((k) => texts[k] !== undefined);
  if (keys.every((k) => (texts[k] ?? '').trim() === '')) return { state: 'empty' };
  const read: Partial<Record<keyof Texts, number>> = {};
  const typed: string[] = [];
  for (const key of keys) {
    const text = texts[key] ?? '';
    const parsed = parseQuantity(text, kind, options(kind, system));
    if (!parsed.ok) return refusal(key, text, kind, parsed);
    read[key] = parsed.value;
    typed.push(parsed.assumed ? `${text.trim()} ${parsed.assumed}` : text.trim());
  }
  const { low, likely = 0, high } = read;
  if (low === undefined || high === undefined)
    return { state: 'understood', value: likely, echo: understood(likely, kind), as: typed.join('') };
  if (!(low <= likely && likely <= high))
    return { state: 'refused', at: 'likely', words: 'Low, likely and high have to rise.' };
  return {
    state: 'understood',
    value: { low, likely, high },
    echo: echoed({ low, likely, high }, kind),
    as: typed.join(' | '),
  };
}

function refusal(
  at: keyof Texts,
  text: string,
  kind: QuantityKind,
  parsed: Exclude<ReturnType<typeof parseQuantity>, { ok: true }>,
): Understood {
  if (parsed.code === 'ambiguous' && parsed.readings && parsed.readings.length > 0)
    return {
      state: 'ambiguous',
      at,
      readings: parsed.readings.map(({ text: exact }) => ({ text: exact, echo: echoOf(exact, kind) })),
    };
  if (parsed.code === 'empty') return { state: 'refused', at, words: 'A range needs all three: low, likely and high.' };
  return { state: 'refused', at, words: refusalWords(text, parsed, kind) };
}

function echoOf(text: string, kind: QuantityKind): string {
  const parsed = parseQuantity(text, kind);
  return parsed.ok ? parsed.understood : text;
}

/** What is written into the document for what was understood. */
export const enteredFrom = (value: number | Range, as: string, known: Known, before: Entered | undefined): Entered => ({
  ...before,
  value,
  known,
  as: as.slice(0, 200),
});

/** The value as read, but with the stored number wherever the text was not touched: a rounded print never comes back in. */
export function untouchedKept(
  read: number | Range,
  texts: Texts,
  stands: Texts,
  before: Entered | undefined,
): number | Range {
  if (!before) return read;
  const was = typeof before.value === 'number' ? { likely: before.value } : before.value;
  const kept = (key: keyof Texts, now: number): number => {
    const old = (was as Partial<Range>)[key];
    return texts[key] === stands[key] && old !== undefined ? old : now;
  };
  if (typeof read === 'number') return kept('likely', read);
  const range = { low: kept('low', read.low), likely: kept('likely', read.likely), high: kept('high', read.high) };
  return range.low <= range.likely && range.likely <= range.high ? range : read;
}
