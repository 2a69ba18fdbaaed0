import { describe, expect, it } from 'vitest';
import { formatRange, printQuantity, type QuantityKind, type System } from './index.ts';

const plain = (text: string): string => text.replaceAll('\u202f', ' ');

describe('numbers as a person reads them', () => {
  it.each<[number, QuantityKind, System, string]>([
    [7033.7, 'power', 'us', '24 000 Btu/h'],
    [10_550, 'power', 'si', '10.6 kW'],
    [0.18878, 'flow', 'us', '400 cfm'],
    [124.54, 'pressure', 'us', '0.5 inH2O'],
    [1.6129, 'length', 'us', `5' 3 1/2"`],
    [0.5715, 'length', 'us', '22 1/2"'],
    [0.3048, 'length', 'si', '305 mm'],
    [-17, 'temperature', 'us', '1.4 °F'],
    [0.4567, 'fraction', 'si', '46%'],
    [-0, 'temperature', 'si', '0 °C'],
    [500, 'degree-hours', 'si', '500 K h'],
    [500, 'degree-hours', 'us', '900 °F h'],
    [3.3461, 'r-value', 'us', 'R-19'],
    [1.057, 'r-value', 'si', '1.06 m²K/W'],
  ])('%d %s in %s', (value, kind, system, text) => {
    expect(plain(printQuantity(value, kind, system))).toBe(text);
  });

  it.each<[number, number, QuantityKind, System, string]>([
    [7421, 10_579, 'power', 'si', '7.4 to 11 kW'],
    [115, 132, 'pressure', 'us', '0.46 to 0.53 inH2O'],
    [-19, -15, 'temperature', 'si', '-19 to -15 °C'],
    [0.3, 1.2, 'length', 'si', '0.3 to 1.2 m'],
    [0.71, 0.83, 'fraction', 'us', '71 to 83%'],
    [5, 5, 'count', 'si', '5'],
    [0.74, 1.41, 'r-value', 'us', 'R-4.2 to R-8'],
  ])('%d to %d %s in %s', (low, high, kind, system, text) => {
    expect(plain(formatRange({ low, likely: (low + high) / 2, high }, kind, system))).toBe(text);
  });

  it('never prints what is no number', () => {
    expect(() => printQuantity(Number.NaN, 'power', 'si')).toThrow();
  });
});
