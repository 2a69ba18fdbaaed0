import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kindNames, parseQuantity, printQuantity, unitLabel } from './index.ts';
import { kindOf, type QuantityKind } from './kinds.ts';

const value = (text: string, kind: QuantityKind, bareUnit?: string) => {
  const parsed = parseQuantity(text, kind, bareUnit === undefined ? {} : { bareUnit });
  return parsed.ok ? parsed.value : parsed.code;
};
const readings = (text: string, kind: QuantityKind) => {
  const parsed = parseQuantity(text, kind);
  return parsed.ok ? [] : (parsed.readings ?? []).map((r) => r.text);
};

describe('lengths the way people write them', () => {
  // Exact by definition: 1 in = 25.4 mm, 1 ft = 0.3048 m (international inch and foot; NIST SP 811).
  it.each([
    [`5' 3 1/2"`, 1.6129],
    ['5′ 3½″', 1.6129],
    ['5’3½”', 1.6129],
    ['5 ft 3.5 in', 1.6129],
    ['5ft 3-1/2in', 1.6129],
    ['63 1/2 in', 1.6129],
    ['63.5"', 1.6129],
    [`10'6"`, 3.2004],
    [`7'9`, 2.3622],
    [`5' 3/4"`, 1.54305],
    ['3/4"', 0.01905],
    ['¾"', 0.01905],
    ['22 1/2 in', 0.5715],
    ['1613 mm', 1.613],
    ['1.613m', 1.613],
    [`-2' 6"`, -0.762],
    [`5' 3,5"`, 1.6129],
    ['3 1⁄2 in', 0.0889],
    ['2 m 40', 2.4],
    ['2m40', 2.4],
    ['2 m 5 cm', 2.05],
    ['2 m 405 mm', 2.405],
    ['1 613 mm', 1.613],
    ['1613,5 mm', 1.6135],
    ['1.613,5 mm', 1.6135],
    ['1,613.5 mm', 1.6135],
    ['0,125 m', 0.125],
  ])('%s', (text, metres) => {
    expect(value(text, 'length')).toBeCloseTo(metres, 12);
  });

  it.each([
    ['12 6', [`12' 6"`, '12.6 m']],
    ['5-6', [`5' 6"`, '5.6 m']],
    ['5.6', ['5.6 ft', '5.6 in', '5.6 m']],
    ['1500', ['1500 ft', '1500 in', '1500 m']],
    ['11/4', ['11/4"', '1 1/4"']],
    ['2 m 5', ['2.5 m', '2.05 m']],
    ['2,400 mm', ['2.400 mm', '2400 mm']],
  ])('%s has two meanings and is not guessed', (text, both) => {
    expect(readings(text, 'length')).toEqual(both);
  });

  it.each([`6' 3 cm`, '5x3', `5' 13"`, '1/0 in', 'six feet', `5'3"4`, '5 ft ft', '--5 in', '2 m 400 cm', '1 6135 mm'])(
    '%s is refused whole',
    (text) => {
      expect(value(text, 'length')).toBe('not-understood');
    },
  );
});

describe('other quantities', () => {
  // Exact factors as in NIST SP 811: 1 Btu(IT) = 1055.05585262 J, 1 cfm = 0.3048³/60 m³/s; 1 inH2O (4 °C) = 249.08891 Pa.
  it.each<[string, QuantityKind, number]>([
    ['36 kBtu/h', 'power', 10_550.5585],
    ['24,000'.replace(',', '\u202f').concat(' Btu/h'), 'power', 7033.70568],
    ['2 tons', 'power', 7033.70568],
    ['400 cfm', 'flow', 0.188778977],
    ['0.5 in. w.c.', 'pressure', 124.544455],
    ['14.7 psi', 'pressure', 101_352.932],
    ['70 F', 'temperature', 21.1111111],
    ['-40°F', 'temperature', -40],
    ['18 °F', 'temperature-difference', 10],
    ['R-19', 'r-value', 3.34609349],
    ['RSI 3.3', 'r-value', 3.3],
    ['560 Ah at 51.2 V', 'energy', 28.672],
    ['5 gal', 'volume', 0.01892705892],
    ['150 lb', 'mass', 68.0388555],
    ['9 in 12', 'angle', 36.8698976],
    ['SSW', 'angle', 202.5],
    ['55.3 W', 'angle', -55.3],
    // Degrees alone are those of the box; a rate said in Btu can only be Btu/h; 1 MWh = 1000 kWh, 1 GJ = 1000/3.6 kWh.
    ['24000 BTU', 'power', 7033.70568],
    ['0.5" wc', 'pressure', 124.544455],
    ['18 000 kWh', 'energy', 18_000],
    ['36 GJ', 'energy', 10_000],
    ['18 MWh', 'energy', 18_000],
    ['560 Ah × 51,2 V', 'energy', 28.672],
    ['RSI 3,3', 'r-value', 3.3],
    ['0,035 W/mK', 'conductivity', 0.035],
    ['minus 20 °C', 'temperature', -20],
    ['+3 °C', 'temperature', 3],
    ['95 square metres', 'area', 95],
    ['45%', 'fraction', 0.45],
    ['0.45', 'fraction', 0.45],
    // ASTM B258 as computed from d = 0.127 mm × 92^((36 − n)/39).
    ['12 AWG', 'wire-size', 3.308773],
    ['1/0', 'wire-size', 53.4751],
  ])('%s as %s', (text, kind, expected) => {
    const got = value(text, kind);
    expect(typeof got === 'number' ? got / expected : got).toBeCloseTo(1, 5);
  });

  it('tells a temperature from a difference', () => {
    expect(value('50 F', 'temperature')).toBeCloseTo(10, 12);
    expect(value('50 F', 'temperature-difference')).toBeCloseTo(27.7778, 4);
  });

  it.each<[string, QuantityKind, string]>([
    ['', 'length', 'empty'],
    ['5 kg', 'length', 'wrong-kind'],
    ['1e400 W', 'power', 'not-finite'],
    ['NaN', 'power', 'not-understood'],
    ['Infinity W', 'power', 'not-understood'],
    ['24 MBH', 'power', 'ambiguous'],
    ['1,500 W', 'power', 'ambiguous'],
    ['24', 'power', 'ambiguous'],
    ['2.5', 'count', 'not-understood'],
  ])('%j as %s is %s', (text, kind, code) => {
    expect(value(text, kind)).toBe(code);
  });

  it.each([
    ['12,5 W', 'power', 12.5],
    ['-5,5 °C', 'temperature', -5.5],
    ['1,234,567 W', 'power', 1_234_567],
  ] as const)('%s can mean one thing only, and is taken', (text, kind, is) => {
    expect(value(text, kind)).toBe(is);
  });

  it('never takes two voltages with a stroke for half a volt', () => {
    expect(readings('120/240 V', 'voltage')).toEqual(['120 V', '240 V']);
    expect(parseQuantity('208/230', 'voltage', { bareUnit: 'V' })).toMatchObject({ ok: false, code: 'ambiguous' });
    expect(value('3/64 in', 'length')).toBeCloseTo((3 / 64) * 0.0254, 9);
  });

  it('asks whether a bare number beside a wire is a gauge or an area', () => {
    // ASTM B258: 12 AWG is 3.31 mm², not twelve.
    expect(readings('12', 'wire-size')).toEqual(['12 AWG', '12 mm²']);
    expect(value('2.5', 'wire-size')).toBe(2.5);
  });

  it.each([
    ["44° 30' N", 44.5],
    ['44°30′15″ S', -(44 + 30.25 / 60)],
    ["-44° 30.6'", -44.51],
  ])('reads %s as maps print it', (text, is) => {
    expect(value(text, 'angle')).toBeCloseTo(is as number, 9);
  });

  it('takes no sixty minutes', () => expect(value("44° 60' N", 'angle')).toBe('not-understood'));

  // By hand: 3.5 x 4 = 14; 12.5 ft x 10 ft = 125 ft², each 0.3048² m².
  it.each([
    ['3,5 x 4 m', undefined, 14],
    ['3.5 × 4', 'm²', 14],
    ['3.5m*4m', undefined, 14],
    ['350 x 400 cm', 'm²', 14],
    [`12' 6" x 10'`, 'ft²', 125 * 0.3048 ** 2],
    ['12.5 x 10', 'ft²', 125 * 0.3048 ** 2],
  ])('%s in a box of %s is a floor by its sides', (text, unit, is) => {
    expect(value(text, 'area', unit)).toBeCloseTo(is as number, 9);
  });

  it('takes no product where nothing says in which unit, nor of anything but an area', () => {
    expect(value('3.5 x 4', 'area')).toBe('not-understood');
    expect(value('3 x 4 x 5 m', 'area')).toBe('not-understood');
    expect(value('3 x 4 W', 'power')).toBe('not-understood');
  });

  it('takes degrees without a letter in the unit of the box, and asks where there is no box', () => {
    expect(value('-4 degrees', 'temperature', '°F')).toBeCloseTo(-20, 12);
    expect(value('-20°', 'temperature', '°C')).toBe(-20);
    expect(readings('-20 degrees', 'temperature')).toEqual(['-20 °F', '-20 °C']);
  });

  it('never asks twice for the same', () => {
    for (const kind of kindNames) {
      const both = readings('24', kind);
      expect(new Set(both).size, kind).toBe(both.length);
    }
  });

  it('names both readings of a comma', () => {
    expect(readings('1,500 W', 'power')).toEqual(['1.500 W', '1500 W']);
  });

  it('takes a bare number in the unit printed in the box, and says so', () => {
    const parsed = parseQuantity('24', 'power', { bareUnit: 'kW' });
    expect(parsed).toMatchObject({ ok: true, value: 24_000, assumed: 'kW' });
  });
});

describe('any quantity', () => {
  const span: Partial<Record<QuantityKind, number>> = { count: 1e6, 'relative-humidity': 1, fraction: 1 };

  it.each(kindNames.flatMap((k) => (['us', 'si'] as const).map((s) => [k, s] as const)))(
    '%s in %s comes back from its own print, to the printed step',
    (kind, system) => {
      const { step, unit } = kindOf(kind).shown[system];
      const factor = kindOf(kind).units.find((x) => x.symbol === unit)?.factor ?? 1;
      fc.assert(
        fc.property(fc.double({ min: -1, max: 1, noNaN: true }), (x) => {
          const number = kind === 'count' ? Math.round(x * 1e6) : x * (span[kind] ?? 1000);
          const text = printQuantity(number, kind, system, { inputForm: true });
          const back = parseQuantity(text, kind, { bareUnit: unitLabel(kind, system) });
          return back.ok && Math.abs(back.value - number) <= step * factor * 0.5000001 + 1e-12;
        }),
        { seed: 20261125, numRuns: 300 },
      );
    },
  );

  it('a million sixteenths of an inch come back exactly', () => {
    for (let n = -20_000; n < 20_000; n += 7) {
      const metres = (n / 16) * 0.0254;
      expect(value(printQuantity(metres, 'length', 'us'), 'length')).toBeCloseTo(metres, 10);
    }
  });

  it('refuses a long sentence at once', () => {
    const before = process.hrtime.bigint();
    for (const text of ['about as much as the old stove gave us, perhaps more', `5 ${'q'.repeat(70)}`, 'x'.repeat(80)])
      expect(value(text, 'power')).toBe('not-understood');
    expect(Number(process.hrtime.bigint() - before) / 1e9).toBeLessThan(2);
  });

  it('never throws on any text, and never gives a number without an echo of what was understood', () => {
    const odd = fc.string({ unit: fc.constantFrom(...`0123456789.,/-'"″′½ ftinmcFKWR%AhV@e+xé`), maxLength: 14 });
    fc.assert(
      fc.property(odd, fc.constantFrom(...kindNames), (text, kind) => {
        const parsed = parseQuantity(text, kind);
        return parsed.ok ? parsed.understood.length > 0 && Number.isFinite(parsed.value) : parsed.at >= 0;
      }),
      { seed: 20261125, numRuns: 20_000 },
    );
  });
});

describe('times of day', () => {
  it.each([
    ['17:30', 17.5],
    ['7:05', 7 + 1 / 12],
    ['5:30 pm', 17.5],
    ['5pm', 17],
    ['12 am', 0],
    ['12:15 p.m.', 12.25],
    ['0:00', 0],
    ['24:00', 24],
    ['17.5 h', 17.5],
  ])('%s', (text, hours) => {
    expect(value(text, 'time-of-day')).toBeCloseTo(hours * 3600, 9);
  });

  it.each([
    ['17h30', 17.5],
    ['1730', 17.5],
    ['17', 17],
  ])('%s is as people write it who use no colon', (text, hours) => {
    expect(value(text, 'time-of-day')).toBe(hours * 3600);
  });

  it('asks whether 7.30 is half past seven or a share of an hour', () => {
    expect(readings('7.30', 'time-of-day')).toEqual(['7:30', '7.30 h']);
  });

  it('takes a bare number by the unit in its box', () => {
    expect(value('17', 'time-of-day', 'h')).toBe(61_200);
  });

  it.each(['25:00', '24:30', '7:60', '13 pm', '0 am', '5:3', '17:30:00', 'noon'])('%s is refused whole', (text) => {
    expect(value(text, 'time-of-day')).toBe('not-understood');
  });

  it('says a time in both ways, so that a missing pm is seen', () => {
    const parsed = parseQuantity('5:30', 'time-of-day');
    expect(parsed.ok && parsed.understood).toBe('5:30 · 5:30 am');
  });

  it('reads every printed minute of a day back', () => {
    for (let minute = 0; minute <= 1440; minute++)
      expect(value(printQuantity(60 * minute, 'time-of-day', 'us'), 'time-of-day')).toBe(60 * minute);
  });
});
