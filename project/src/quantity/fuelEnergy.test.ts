import { describe, expect, it } from 'vitest';
import { parseQuantity } from './parse.ts';

const btu = 1055.05585262 / 3.6e6;
const kWh = (text: string) => {
  const parsed = parseQuantity(text, 'energy');
  return parsed.ok ? parsed.value : parsed;
};

describe('fuel as people buy it', () => {
  // US Energy Information Administration, “British thermal units”, conversion factors of 2019.
  it.each([
    ['3 cords', 3 * 20e6],
    ['3.5 cords of firewood', 3.5 * 20e6],
    ['500 gal of oil', 500 * 138_500],
    ['500 gallons heating oil', 500 * 138_500],
    ['120 gal propane', 120 * 91_452],
    ['900 ccf', 90_000 * 1037],
    ['12 Mcf of gas', 12_000 * 1037],
    ['600 therms', 600 * 1e5],
  ])('%s is %d Btu', (text, wanted) => expect(kWh(text)).toBeCloseTo(wanted * btu, 6));

  it('exactly in litres, stacked metres and pounds', () => {
    expect(kWh('3785.411784 L of oil')).toBeCloseTo(1000 * 138_500 * btu, 6);
    // A cord is 128 ft³ of 0.3048 m.
    expect(kWh('3.624556363776 m³ of stacked wood')).toBeCloseTo(20e6 * btu, 6);
    // 16.5 MJ/kg, the least of the best class of ISO 17225-2.
    expect(kWh('2 US tons of pellets')).toBeCloseTo((4000 * 0.45359237 * 16.5) / 3.6, 6);
    expect(kWh('42 lb of propane')).toBeCloseTo(10 * 91_452 * btu, 6);
  });

  it('asks which fuel, or which ton, where it is not said; each answer reads as exactly that', () => {
    for (const [text, wanted] of [
      ['500 gal', ['500 gal of oil', '500 gal of propane']],
      ['40 lb', ['40 lb of propane', '40 lb of pellets']],
      ['2 tons of pellets', ['2 US tons of pellets', '2 tonnes of pellets']],
      ['80 m³', ['80 m³ of gas', '80 m³ of wood']],
    ] as const) {
      const parsed = parseQuantity(text, 'energy');
      expect(parsed).toMatchObject({ ok: false, code: 'ambiguous' });
      const readings = parsed.ok ? [] : (parsed.readings ?? []);
      expect(readings.map((r) => r.text)).toEqual(wanted);
      for (const r of readings) expect(kWh(r.text)).toBe(r.value);
    }
  });

  it('takes no measure that differs from yard to yard, and no fuel where no energy is asked for', () => {
    for (const text of ['2 face cords', '3 ricks', '5 bags of pellets']) expect(kWh(text)).toMatchObject({ ok: false });
    expect(parseQuantity('3 cords', 'power')).toMatchObject({ ok: false });
  });
});

it('a price by the gallon is that by the litre times its litres', () => {
  // A US gallon is 231 cubic inches.
  expect(parseQuantity('3.785411784 a gallon', 'price-of-volume')).toMatchObject({
    ok: true,
    value: expect.closeTo(1, 12),
  });
  expect(parseQuantity('1.6 /L', 'price-of-volume')).toMatchObject({ ok: true, value: 1.6 });
});
