import { readingWords } from '@kneewall/engine';
import { type Entered, printQuantity, type QuantityKind } from '@kneewall/project';
import { useSession, useUnits } from '../services.ts';
import { useReadingName } from '../words/useReadingName.ts';

/** A reading's number says its kind only through what it is held against; undefined for every other field. */
export function useReadingKind([list, id = '', field]: readonly string[]): QuantityKind | undefined {
  const expected = useSession((s) =>
    list === 'readings' && field === 'value' ? s.project.readings?.[id]?.expected : '',
  );
  return readingWords[expected?.split(':')[0] ?? '']?.kind;
}

/** What an entry of the readings is called: what was read, and what came out; undefined for entries of other lists. */
export function useReadingEntry(path: readonly string[], entry: Readonly<Record<string, unknown>>): string | undefined {
  const units = useUnits();
  const nameOf = useReadingName();
  const { expected, value } = entry;
  if (path[0] !== 'readings' || path.length !== 2 || typeof expected !== 'string') return undefined;
  return `${nameOf(expected)}${cameOut(expected, value as Entered | undefined, (v, kind) => printQuantity(v, kind, units))}`;
}

/** What came out, after the name of what was read: a number in its own units, or the answer to a look. */
export function cameOut(
  expected: string,
  entered: Entered | undefined,
  print: (value: number, kind: QuantityKind) => string,
) {
  if (!entered) return '';
  const value = typeof entered.value === 'number' ? entered.value : entered.value.likely;
  const kind = readingWords[expected.split(':')[0] ?? '']?.kind;
  if (kind) return `: ${print(value, kind)}`;
  return value === 1 ? ' Yes.' : value === 0 ? ' No.' : `: ${value}`;
}
