import type { Range } from '../schema/entered.ts';
import { printFeetInches } from './feetInches.ts';
import { findUnit, kindOf, type QuantityKind, type System } from './kinds.ts';
import { isTimeOfDay, printTimeOfDay } from './timeOfDay.ts';

export type PrintOptions = {
  /** Significant figures; 3 unless told. Ignored for feet and inches. */
  readonly significant?: number;
  /** A unit of the kind, by symbol, instead of the system's own. */
  readonly unit?: string;
  /** For a field to be edited: to the form's step, no grouping of thousands. */
  readonly inputForm?: boolean;
};

/** Blanks that part thousands and hold number and unit together. */
const narrowBlank = '\u202f';

/** A quantity in the units of one system, as text. The value is in the kind's unit and finite; anything else is our fault. */
export function printQuantity(value: number, kind: QuantityKind, system: System, options: PrintOptions = {}): string {
  if (!Number.isFinite(value)) throw new Error(`assert: a ${kind} that is not a number cannot be printed`);
  if (kind === 'length' && system === 'us' && options.unit === undefined) return printFeetInches(value, 16);
  if (kind === 'time-of-day' && isTimeOfDay(value)) return printTimeOfDay(value);
  if (namesResistance(kind, system) && options.unit === undefined && !options.inputForm)
    return `R-${numberText(inUnit(value, kind, usResistance), usResistance, kind, system, options)}`;
  const unit = options.unit ?? unitFor(value, kind, system, options.inputForm === true);
  return withUnit(numberText(inUnit(value, kind, unit), unit, kind, system, options), unit);
}

/** Insulation is sold as R-19 where feet are used; nobody says its unit. */
const usResistance = 'h·ft²·°F/Btu';
const namesResistance = (kind: QuantityKind, system: System): boolean => kind === 'r-value' && system === 'us';

function inUnit(value: number, kind: QuantityKind, symbol: string): number {
  const unit = findUnit(kind, symbol);
  if (!unit) throw new Error(`assert: ${kind} has no unit ${symbol}`);
  return (value - (unit.offset ?? 0)) / unit.factor;
}

/** Kilowatts, and centimetres' worth of millimetres, read better than long rows of digits. */
function unitFor(value: number, kind: QuantityKind, system: System, form: boolean): string {
  const usual = kindOf(kind).shown[system].unit;
  if (form) return usual;
  if (usual === 'W' && Math.abs(value) >= 10_000) return 'kW';
  if (kind === 'length' && Math.abs(value) < 1) return 'mm';
  if (kind === 'time' && Math.abs(value) >= 7200) return 'h';
  return usual;
}

function numberText(n: number, unit: string, kind: QuantityKind, system: System, options: PrintOptions): string {
  const { step } = kindOf(kind).shown[system];
  if (options.inputForm) return decimalText(n, step);
  if (kind === 'money' || kind === 'count' || kind === 'voltage') return grouped(decimalText(n, 1));
  // A tenth of a degree is as fine as anybody reads; three figures would print -0.0432 °C.
  if (kind === 'temperature' || kind === 'temperature-difference' || kind === 'angle') return decimalText(n, 0.1);
  if (kind === 'relative-humidity' || kind === 'fraction') return decimalText(n, Math.abs(n) < 10 ? 0.1 : 1);
  return grouped(decimalText(n, significantStep(n, options.significant ?? 3, finestStep(kind, system, unit))));
}

/** The step of the last of so many figures, never finer than the kind's own. */
function significantStep(n: number, figures: number, finest: number): number {
  if (n === 0) return 1;
  return Math.max(10 ** (Math.floor(Math.log10(Math.abs(n)) + 1e-9) + 1 - figures), finest);
}

/** The form's step, in the unit that is printed, as a power of ten. */
function finestStep(kind: QuantityKind, system: System, unit: string): number {
  const { shown } = kindOf(kind);
  const ratio = (findUnit(kind, shown[system].unit)?.factor ?? 1) / (findUnit(kind, unit)?.factor ?? 1);
  return 10 ** Math.floor(Math.log10(shown[system].step * ratio) + 1e-9);
}

/** Rounded to a step that is a power of ten, without exponent, and never a minus zero. */
function decimalText(n: number, step: number): string {
  const places = Math.max(0, Math.round(-Math.log10(step)));
  const rounded = Math.round(n / step) * step;
  const text = rounded.toFixed(places);
  const short = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return Number(short) === 0 ? '0' : short;
}

const grouped = (text: string): string => {
  const [whole = '', rest] = text.split('.');
  const parted = whole.replace(/\B(?=(\d{3})+$)/g, narrowBlank);
  return rest === undefined ? parted : `${parted}.${rest}`;
};

const withUnit = (text: string, unit: string): string =>
  unit === '' ? text : unit === '%' || unit === '°' ? `${text}${unit}` : `${text} ${unit}`;

/** `low to high` with the unit once, the larger end's unit for both; a single number where both print alike. */
export function formatRange(range: Range, kind: QuantityKind, system: System): string {
  // Feet, R-values by name and times of day carry their unit within the number.
  const named = (kind === 'length' && system === 'us') || kind === 'time-of-day' || namesResistance(kind, system);
  const larger = Math.abs(range.high) > Math.abs(range.low) ? range.high : range.low;
  const unit = unitFor(larger, kind, system, false);
  const print = (n: number) => printQuantity(n, kind, system, named ? {} : { significant: 2, unit });
  const [low, high] = [print(range.low), print(range.high)];
  if (low === high) return printQuantity(range.likely, kind, system);
  return named || unit === '' ? `${low} to ${high}` : `${low.slice(0, -unit.length).trimEnd()} to ${high}`;
}

/** The echo of what was understood, in both systems: `5' 3 1/2" · 1.613 m`; a time of day in both ways of saying it. */
export function understood(value: number, kind: QuantityKind): string {
  if (kind === 'time-of-day' && isTimeOfDay(value)) return `${printTimeOfDay(value)} · ${printTimeOfDay(value, true)}`;
  const us = printQuantity(value, kind, 'us');
  const si = kind === 'length' ? lengthSi(value) : printQuantity(value, kind, 'si', { significant: 4 });
  return us === si ? us : `${us} · ${si}`;
}

const lengthSi = (value: number): string =>
  Math.abs(value) < 10 ? `${decimalText(value * 1000, 1)} mm` : `${decimalText(value, 0.001)} m`;
