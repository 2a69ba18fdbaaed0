import type { QuantityKind, Range, System } from '@kneewall/project';
import { nodeAt } from '@kneewall/project';
import { formatRange, printQuantity } from '@kneewall/project/quantity';
import { inch } from '../physics/exact.ts';
import type { Judged } from './judge.ts';

/** Turns numbers into the person's words. The only place where a plan rounds. */
export type Printer = {
  readonly system: System;
  quantity(value: number, kind: QuantityKind): string;
  /** To two figures: for "about". */
  rounded(value: number, kind: QuantityKind): string;
  range(range: Range, kind: QuantityKind): string;
  /** To two figures in a unit of the kind that suits the thing better than the system's own, by symbol. */
  inUnit(value: number | Range, kind: QuantityKind, unit: string): string;
  /** The open area of a grille or gap: whole square inches or square centimetres. */
  opening(area: number): string;
  /** The finding's own value, as a number or a range; empty where it has none. */
  value(judged: Judged): string;
  /** The limit that counts. */
  limit(judged: Judged): string;
  /** The label of a field, by its dotted path: for "what is missing". */
  field(path: string): string;
};

/** A field's label with the name of what it belongs to. `#` parts off which side of a guess is meant. */
function fieldName(path: string): string {
  const keys = (path.split('#')[0] ?? path).split('.');
  const label = nodeAt(keys)?.node.meta.label ?? keys.at(-1) ?? path;
  const entry = keys.findLastIndex((_, i) => nodeAt(keys.slice(0, i + 1))?.entry === true);
  return entry < 0 ? label : `${label} (${(keys[entry] ?? '').replaceAll('-', ' ')})`;
}

export function printerFor(system: System): Printer {
  const quantity = (value: number, kind: QuantityKind) => printQuantity(value, kind, system);
  const range = (r: Range, kind: QuantityKind) => formatRange(r, kind, system);
  const inUnit = (value: number | Range, kind: QuantityKind, unit: string): string => {
    if (typeof value === 'number') return printQuantity(value, kind, system, { significant: 2, unit });
    const [low, high] = [inUnit(value.low, kind, unit), inUnit(value.high, kind, unit)];
    return low === high ? inUnit(value.likely, kind, unit) : `${low.slice(0, -unit.length).trimEnd()} to ${high}`;
  };
  return {
    system,
    inUnit,
    opening: (area) => (system === 'us' ? `${Math.round(area / inch ** 2)} in²` : `${Math.round(area * 1e4)} cm²`),
    quantity,
    rounded: (value, kind) => printQuantity(value, kind, system, { significant: 2 }),
    range,
    value: ({ value, kind }) => {
      if (!value.ok) return '';
      return typeof value.value === 'number' ? quantity(value.value, kind) : range(value.value, kind);
    },
    limit: ({ limit, kind }) => {
      const bound = limit.max ?? limit.min;
      return bound === undefined ? '' : quantity(bound, kind);
    },
    field: fieldName,
  };
}
