import { specialReading, specialReadings } from './forms.ts';
import { type FuelMeant, fuelsMeant } from './fuelEnergy.ts';
import { findUnit, inch, kindNames, kindOf, type QuantityKind } from './kinds.ts';
import { commaReadings, plain, readNumber, withPoints } from './number.ts';
import { understood } from './print.ts';
import { wireArea } from './wire.ts';

export type Reading = { readonly text: string; readonly value: number };
export type Parsed =
  | { readonly ok: true; readonly value: number; readonly understood: string; readonly assumed?: string }
  | {
      readonly ok: false;
      readonly code: 'empty' | 'not-understood' | 'ambiguous' | 'wrong-kind' | 'not-finite';
      /** Where in the text understanding stopped. */
      readonly at: number;
      /** What it could mean, each in words that parse to exactly that. */
      readonly readings?: readonly Reading[];
    };

type Options = {
  /** The unit printed inside the field's box. Without it a bare number of a kind with several units is ambiguous. */
  readonly bareUnit?: string;
};
/** While it is looked for where understanding stopped, the parts tried are not searched in turn. */
type Inside = Options & { readonly unplaced?: true };

/**
 * Reads what a person wrote as a quantity of one kind, into that kind's unit. The whole text must be understood;
 * nothing is taken from its beginning. Text with two sane meanings is refused with both. Never throws.
 */
export function parseQuantity(text: string, kind: QuantityKind, options: Options = {}): Parsed {
  return read(text, kind, options);
}

function read(text: string, kind: QuantityKind, options: Inside): Parsed {
  const written = plain(text);
  if (written === '') return { ok: false, code: 'empty', at: 0 };
  if (written.length > 80) return { ok: false, code: 'not-understood', at: 80 };
  const special = specialReading(written, kind) ?? specialReading(withPoints(written), kind);
  if (special !== undefined) return taken(special, kind);
  const sides = kind === 'area' ? sidesReading(written, options) : undefined;
  if (sides) return sides;
  const either = specialReadings(written, kind);
  if (either.length > 0) return asked(either, kind, written.length);
  const split = /^(-?(?:[\d.,/]|[ -](?=\d))+(?:e[-+]?\d+)?)\s*(.*)$/i.exec(written);
  if (!split) return refusedAt(text, written, kind, options);
  const [, number = '', unitText = ''] = split;
  return number.includes(',')
    ? commas(number, unitText, kind, options)
    : numberAndUnit(text, number, unitText, kind, options);
}

/** Readings to choose from; nobody is asked to choose between one. */
function asked(texts: readonly string[], kind: QuantityKind, at: number): Parsed {
  const readings = texts.flatMap((text) => {
    const parsed = read(text, kind, {});
    return parsed.ok ? [{ text, value: parsed.value }] : [];
  });
  const [only] = readings;
  return only && readings.length === 1 ? taken(only.value, kind) : { ok: false, code: 'ambiguous', at, readings };
}

/** `3,5 x 4 m`, `12' 6" × 10'`: a floor by its two sides. A unit at the second alone is that of both; none is the box's. */
function sidesReading(written: string, options: Inside): Parsed | undefined {
  const [, first = '', second] = /^(\S.*?) ?[x×*] ?(\S.*)$/i.exec(written) ?? [];
  if (second === undefined) return undefined;
  const own = /[a-z]+$/i.exec(second)?.[0] ?? (options.bareUnit ?? '').replace(/[²2]$/, '');
  const bareUnit = findUnit('length', own)?.symbol;
  const [a, b] = [first, second].map((side) =>
    read(side, 'length', { unplaced: true, ...(bareUnit ? { bareUnit } : {}) }),
  );
  return a?.ok && b?.ok ? taken(a.value * b.value, 'area') : undefined;
}

function commas(number: string, unitText: string, kind: QuantityKind, options: Inside): Parsed {
  const readings = commaReadings(number).flatMap(({ text }) => {
    const whole = `${text}${unitText === '' ? '' : ` ${unitText}`}`;
    const parsed = read(whole, kind, options);
    return parsed.ok ? [{ text: whole, value: parsed.value }] : (parsed.readings ?? []);
  });
  if (readings.length === 0) return { ok: false, code: 'not-understood', at: number.indexOf(',') };
  // `12,5` can only part decimals: nobody is asked to choose between one.
  const [only] = readings;
  if (only && readings.length === 1) return read(only.text, kind, options);
  return { ok: false, code: 'ambiguous', at: number.indexOf(','), readings };
}

function numberAndUnit(text: string, number: string, unitText: string, kind: QuantityKind, options: Inside): Parsed {
  const value = readNumber(number);
  if (value === undefined) return numberProblem(text, number, unitText, kind, options);
  if (!Number.isFinite(value)) return { ok: false, code: 'not-finite', at: 0 };
  if (unitText === '' || (kind === 'temperature' && /^(?:°|deg\.?|degrees?)$/i.test(unitText)))
    return bare(number, value, kind, options);
  if (unitText === 'MBH' && kind === 'power') return thousands(number, value);
  const unit = findUnit(kind, unitText.trim());
  if (unit) return taken(value * unit.factor + (unit.offset ?? 0), kind);
  const fuels = kind === 'energy' ? fuelsMeant(unitText) : [];
  if (fuels.length > 0) return asFuel(number.trim(), value, fuels);
  const elsewhere = kindNames.some((k) => findUnit(k, unitText.trim()) !== undefined);
  return {
    ok: false,
    code: elsewhere ? 'wrong-kind' : 'not-understood',
    at: Math.max(0, text.lastIndexOf(unitText.trim())),
  };
}

/** Fuel as what it holds; a gallon may be of oil or of propane. */
function asFuel(number: string, value: number, fuels: readonly FuelMeant[]): Parsed {
  const [only] = fuels;
  if (only && fuels.length === 1) return taken(value * only.factor, 'energy');
  const readings = fuels.map(({ words, factor }) => ({ text: `${number} ${words}`, value: value * factor }));
  return { ok: false, code: 'ambiguous', at: number.length, readings };
}

/** Two numbers side by side, or a hyphen between them. */
function numberProblem(text: string, number: string, unitText: string, kind: QuantityKind, options: Inside): Parsed {
  const two = /^(\d+)[ -](\d+(?:\/\d+)?)$/.exec(number);
  if (kind === 'length' && two && unitText === '') {
    const readings = lengthReadings(two[1] ?? '', two[2] ?? '');
    if (readings.length > 0) return { ok: false, code: 'ambiguous', at: number.search(/[ -]/), readings };
  }
  const pair = /^(\d+)\/(\d+)$/.exec(number);
  if (pair && Number(pair[2]) > 0) return eitherOf([pair[1] ?? '', pair[2] ?? ''], unitText, kind, options);
  return refusedAt(text, plain(text), kind, options);
}

/** `120/240 V` names two values; taken as a fraction it would be half a volt. */
function eitherOf(numbers: readonly string[], unitText: string, kind: QuantityKind, options: Inside): Parsed {
  const unit = unitText === '' ? (options.bareUnit ?? '') : unitText;
  const readings = numbers.flatMap((n) => {
    const text = unit === '' ? n : `${n} ${unit}`;
    const parsed = read(text, kind, options);
    return parsed.ok ? [{ text, value: parsed.value }] : [];
  });
  const at = numbers[0]?.length ?? 0;
  return readings.length > 0
    ? { ok: false, code: 'ambiguous', at, readings }
    : { ok: false, code: 'not-understood', at };
}

function lengthReadings(first: string, second: string): Reading[] {
  return [`${first}' ${second}"`, second.includes('/') ? `${first} ${second}"` : `${first}.${second} m`].flatMap(
    (t) => {
      const p = parseQuantity(t, 'length');
      return p.ok ? [{ text: t, value: p.value }] : [];
    },
  );
}

/** A number alone: the box's unit where one is printed; the kind's only unit; else every unit it may mean. */
function bare(number: string, value: number, kind: QuantityKind, options: Options): Parsed {
  if (kind === 'length' && number.includes('/') && !/[ -]/.test(number.replace(/^-/, '')) && improper(number))
    return fractionOrMixed(number, value);
  if (kind === 'fraction' && options.bareUnit === '%' && Math.abs(value) < 1 && value !== 0)
    return percentOrShare(number, value);
  if (kind === 'wire-size') {
    const gauge = wireArea(`${number} AWG`);
    if (gauge !== undefined) return gaugeOrArea(number, gauge, value);
  }
  const usual = usualUnits(kind);
  const unit =
    options.bareUnit === undefined
      ? (unitless(kind) ?? (usual.length === 1 ? findUnit(kind, usual[0] ?? '') : undefined))
      : findUnit(kind, options.bareUnit);
  if (unit)
    return {
      ...taken(value * unit.factor + (unit.offset ?? 0), kind),
      ...(unit.symbol === '' ? {} : { assumed: unit.symbol }),
    } as Parsed;
  const readings = usual.map((symbol) => {
    const meant = findUnit(kind, symbol);
    return { text: `${number} ${symbol}`, value: value * (meant?.factor ?? 1) + (meant?.offset ?? 0) };
  });
  return { ok: false, code: 'ambiguous', at: number.length, readings };
}

/** The units a bare number may be in. Heights are said in feet as often as in inches, and an inverter in kW. */
const usualUnits = (kind: QuantityKind): readonly string[] => {
  const { us, si } = kindOf(kind).shown;
  if (kind === 'electric-power') return ['W', 'kW'];
  return kind === 'length' ? ['ft', us.unit, si.unit] : [...new Set([us.unit, si.unit])];
};

const unitless = (kind: QuantityKind) => kindOf(kind).units.find((x) => x.symbol === '');

const improper = (number: string): boolean => {
  const [top = '0', bottom = '1'] = number.split('/');
  return Math.abs(Number(top)) > Number(bottom);
};

/** `11/4` may be eleven quarters, or one and a quarter with the blank lost. */
function fractionOrMixed(number: string, value: number): Parsed {
  const mixed = `${number.slice(0, 1)} ${number.slice(1)}`;
  const other = readNumber(mixed);
  const readings = [{ text: `${number}"`, value: value * inch }];
  if (other !== undefined) readings.push({ text: `${mixed}"`, value: other * inch });
  return { ok: false, code: 'ambiguous', at: number.indexOf('/'), readings };
}

const percentOrShare = (number: string, value: number): Parsed => ({
  ok: false,
  code: 'ambiguous',
  at: number.length,
  readings: [
    { text: `${Number((value * 100).toPrecision(12))}%`, value },
    { text: `${number}%`, value: value / 100 },
  ],
});

/** `12` beside a wire is a gauge to one and square millimetres to another: a third of it, or all. */
const gaugeOrArea = (number: string, gauge: number, area: number): Parsed => ({
  ok: false,
  code: 'ambiguous',
  at: number.length,
  readings: [
    { text: `${number} AWG`, value: gauge },
    { text: `${number} mm²`, value: area },
  ],
});

/** MBH is a thousand Btu/h to the trade and a million to others. */
const thousands = (number: string, value: number): Parsed => ({
  ok: false,
  code: 'ambiguous',
  at: number.length,
  readings: [
    { text: `${number} kBtu/h`, value: value * (findUnit('power', 'kBtu/h')?.factor ?? 0) },
    { text: `${number}000 kBtu/h`, value: value * 1000 * (findUnit('power', 'kBtu/h')?.factor ?? 0) },
  ],
});

function taken(value: number, kind: QuantityKind): Parsed {
  if (!Number.isFinite(value)) return { ok: false, code: 'not-finite', at: 0 };
  if (kind === 'count' && !Number.isInteger(value)) return { ok: false, code: 'not-understood', at: 0 };
  return { ok: true, value: value === 0 ? 0 : value, understood: understood(value, kind) };
}

/** Where understanding stopped: the longest beginning that reads by itself. */
function refusedAt(text: string, written: string, kind: QuantityKind, options: Inside): Parsed {
  if (!options.unplaced)
    for (let n = written.length - 1; n > 0; n--)
      if (read(written.slice(0, n), kind, { ...options, unplaced: true }).ok)
        return { ok: false, code: 'not-understood', at: Math.min(n, text.length) };
  return { ok: false, code: 'not-understood', at: 0 };
}
