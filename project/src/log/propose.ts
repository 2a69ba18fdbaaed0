import type { Dialect } from './dialect.ts';
import { headingWords } from './headingWords.ts';
import { type LogQuantity, type LogUnit, logQuantityIds, quantityOf, unitsOfDimension } from './quantities.ts';

/** A column by its heading and the unit it is in. */
export type LogColumn = { readonly name: string; readonly unit: LogUnit };
export type LogColumns = Readonly<Partial<Record<LogQuantity, LogColumn>>>;

const unitWords: readonly (readonly [RegExp, LogUnit])[] = [
  [/k\s?w\s?\/\s?m/, 'kWm2'],
  [/w\s?\/\s?m|w m-2/, 'Wm2'],
  [/kwh|kw h/, 'kWh-each'],
  [/\bwh\b|_wh/, 'Wh-each'],
  [/\bkw\b|_kw|kilowatt/, 'kW'],
  [/\bw\b|_w\b|watt/, 'W'],
  [/m3\/h|m³\/h/, 'm3h'],
  [/m3\/s|m³\/s/, 'm3s'],
  [/l\/s/, 'Ls'],
  [/cfm/, 'cfm'],
  [/km\/h|kph/, 'kmh'],
  [/mph/, 'mph'],
  [/m\/s/, 'ms'],
  [/°\s?f|\bf\b|_f\b|fahrenheit|degf/, 'F'],
  [/°\s?c|\bc\b|_c\b|celsius|degc|grad/, 'C'],
  [/%/, 'percent'],
];

/** The unit that a heading states, if it is one of the kind. */
function statedUnit(head: string, units: readonly LogUnit[]): LogUnit | undefined {
  const h = head.toLowerCase();
  return unitWords.find(([word, unit]) => units.includes(unit) && word.test(h))?.[1];
}

const numbersIn = (dialect: Dialect, column: number): number[] =>
  dialect.sample
    .map((r) => Number((r[column] ?? '').replace(dialect.decimal, '.')))
    .filter((x, i) => Number.isFinite(x) && (dialect.sample[i]?.[column] ?? '') !== '');

/** Energy that never falls and stands high above its steps is a meter's reading. */
const isMeter = (x: readonly number[]): boolean =>
  x.length > 2 &&
  x.every((v, i) => i === 0 || v >= (x[i - 1] ?? 0)) &&
  (x[0] ?? 0) > (3 * Math.max(1e-9, (x.at(-1) ?? 0) - (x[0] ?? 0))) / x.length;

/** What each column seems to hold, from its heading and its first numbers. A proposal: the person confirms it. */
export function proposeColumns(dialect: Dialect): LogColumns {
  const free = new Set(dialect.heads.keys());
  for (const c of dialect.time) free.delete(c);
  const proposed: Partial<Record<LogQuantity, LogColumn>> = {};
  for (const id of logQuantityIds) {
    const units = unitsOfDimension(quantityOf(id).dimension);
    const at = [...free].find((c) => {
      const head = (dialect.heads[c] ?? '').toLowerCase().replace(/_/g, ' ');
      if (!headingWords[id]?.test(head)) return false;
      const any = unitWords.find(([word]) => word.test(head))?.[1];
      return any === undefined || units.includes(any) || statedUnit(head, units) !== undefined;
    });
    if (at === undefined) continue;
    free.delete(at);
    proposed[id] = { name: dialect.heads[at] ?? '', unit: unitFor(dialect, at, id) };
  }
  // Rooms beyond the first.
  for (const id of ['indoor2', 'indoor3'] as const) {
    const at = [...free].find(
      (c) =>
        headingWords.indoor?.test((dialect.heads[c] ?? '').toLowerCase()) &&
        !/humid|%|watt|kwh/i.test(dialect.heads[c] ?? ''),
    );
    if (at === undefined || !proposed.indoor) continue;
    free.delete(at);
    proposed[id] = { name: dialect.heads[at] ?? '', unit: unitFor(dialect, at, id) };
  }
  return proposed;
}

/** The unit a heading states, else the likelier by the size of its numbers. */
function unitFor(dialect: Dialect, column: number, id: LogQuantity): LogUnit {
  const { dimension } = quantityOf(id);
  const units = unitsOfDimension(dimension);
  const head = (dialect.heads[column] ?? '').replace(/_/g, ' ');
  const x = numbersIn(dialect, column);
  const stated = statedUnit(head, units);
  if (stated === 'kWh-each' || stated === 'Wh-each')
    return isMeter(x) ? (stated === 'kWh-each' ? 'kWh-meter' : 'Wh-meter') : stated;
  if (stated) return stated;
  const most = x.reduce((a, v) => Math.max(a, Math.abs(v)), 0);
  if (dimension === 'power') return most < 60 ? 'kW' : 'W';
  if (dimension === 'humidity') return most > 1.5 ? 'percent' : 'share';
  if (dimension === 'temperature') {
    const middle = [...x].sort((a, b) => a - b)[x.length >> 1] ?? 0;
    return /^indoor/.test(id) && middle > 45 ? 'F' : 'C';
  }
  return units[0] ?? 'C';
}
