import { describe, expect, it } from 'vitest';
import { boxText, boxTexts, understand, untouchedKept } from './understand.ts';

const length = (likely: string, system: 'us' | 'si' = 'us') => understand({ likely }, 'length', system);

describe('what the box understands', () => {
  it('reads 5\' 3 1/2" whole and says it in both systems', () => {
    // 63.5 in × 25.4 mm/in = 1612.9 mm, by the definition of the inch.
    expect(length('5\' 3 1/2"')).toMatchObject({ state: 'understood', value: 1.6129, echo: '5\' 3 1/2" · 1613 mm' });
  });
  it.each([
    ['5-6', 2],
    ['11/4', 2],
    ['5', 3],
  ])('asks which is meant by %j', (text, count) => {
    const read = length(text);
    expect(read.state).toBe('ambiguous');
    expect(read.state === 'ambiguous' && read.readings.length).toBe(count);
  });
  it('takes a bare number where the box prints its unit', () => {
    expect(length('2.4', 'si')).toMatchObject({ state: 'understood', value: 2.4, as: '2.4 m' });
    expect(understand({ likely: '-4' }, 'temperature', 'us')).toMatchObject({ state: 'understood', value: -20 });
  });
  it.each(['7 apples', '1/2/3 in', 'x'])('refuses %j and never takes a part of it', (text) => {
    expect(length(text).state).toBe('refused');
  });
  it('says what may be written instead of what it does not understand', () => {
    const words = (likely: string, kind: 'energy' | 'count') => {
      const read = understand({ likely }, kind, 'us');
      return read.state === 'refused' ? read.words : read.state;
    };
    expect(words('3 armfuls', 'energy')).toContain('Write a number in kWh');
    expect(words('1.5', 'count')).toContain('Write a whole number');
  });
  it('wants low, likely and high to rise', () => {
    const range = (low: string, likely: string, high: string) => understand({ low, likely, high }, 'area', 'si');
    expect(range('90', '95', '100')).toMatchObject({ state: 'understood', value: { low: 90, likely: 95, high: 100 } });
    expect(range('90', '80', '100').state).toBe('refused');
    expect(range('90', '', '100').state).toBe('refused');
  });
  it('is empty for blanks', () => {
    expect(length('  ').state).toBe('empty');
  });
  it.each(['us', 'si'] as const)('shows values in %s that it reads back', (system) => {
    for (const value of [0.1, 1.6129, 2.4]) {
      const read = understand({ likely: boxText(value, 'length', system) }, 'length', system);
      // To the step the box prints: a thirty-second of an inch, half a millimetre.
      expect(read.state === 'understood' && Math.abs((read.value as number) - value)).toBeLessThan(0.0254 / 31);
    }
    expect(boxTexts({ value: { low: 1, likely: 2, high: 3 }, known: 'assumed' }, 'count', system)).toEqual({
      low: '1',
      likely: '2',
      high: '3',
    });
  });
  it('never lets the rounding of a print change a number that nobody touched', () => {
    const before = { value: { low: 0.12345, likely: 0.23456, high: 0.34567 }, known: 'estimated' } as const;
    const stands = boxTexts(before, 'length', 'us');
    const texts = { ...stands, high: '15 in' };
    const read = understand(texts, 'length', 'us');
    expect(read.state).toBe('understood');
    if (read.state !== 'understood') return;
    expect(untouchedKept(read.value, texts, stands, before)).toEqual({ low: 0.12345, likely: 0.23456, high: 0.381 });
  });
});
