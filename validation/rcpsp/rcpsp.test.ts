import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkSource } from '../src/checkSource.ts';
import { source } from './measure.ts';
import { whatIsWrong } from './published.ts';
import { readInstance } from './readInstance.ts';

checkSource(source, 60);

const text = (name: string) => readFileSync(new URL(`./instances/${name}.sm`, import.meta.url), 'utf8');

describe('an instance file', () => {
  it('is read with any line ends and spacing', () => {
    const plain = readInstance(text('j301_1'));
    expect(plain.durations.length).toBe(32);
    expect(plain.capacity).toEqual([12, 13, 4, 12]);
    const unix = text('j301_1').replaceAll('\r\n', '\n');
    for (const changed of [
      unix.replaceAll('\n', '\r\n'),
      unix.replaceAll(/ +/g, '\t '),
      `\uFEFF${unix}\n\n`,
      unix.replaceAll('\n', '  \n'),
    ])
      expect(readInstance(changed)).toEqual(plain);
  });

  it('that is cut short or of another kind says so', () => {
    expect(() => readInstance('nothing')).toThrow(/PRECEDENCE/);
    expect(() => readInstance(text('j301_1').replace(/RESOURCEAVAILABILITIES[\s\S]*/, ''))).toThrow();
    expect(() => readInstance(text('j301_1').replace(/^ {2}26 .*$/m, ''))).toThrow();
  });
});

// Starts of jobs 1 to 32 that reach the two hard optima, found by other means (a time-indexed programme): from the checks' data.
const reached = {
  j3013_1: '0 2 0 0 4 2 15 16 25 25 5 11 35 17 5 39 33 13 25 45 13 46 34 21 46 49 28 39 49 50 25 58',
  j3029_2: '0 0 20 0 6 13 10 33 29 6 52 26 20 42 61 16 27 27 40 61 37 72 71 50 62 40 53 79 49 85 71 90',
};

describe('the checker of starts', () => {
  it.each(Object.entries(reached))('accepts the known plan of %s, and nothing squeezed or clashing', (name, list) => {
    const instance = readInstance(text(name));
    const starts = list.split(' ').map(Number);
    expect(whatIsWrong(instance, starts)).toEqual([]);
    starts.forEach((s, i) => {
      if (i > 0 && s > 0 && instance.durations[i] !== 0)
        expect(whatIsWrong(instance, starts.with(i, -1)).length).toBeGreaterThan(0);
    });
    expect(
      whatIsWrong(
        instance,
        starts.map(() => 0),
      ).length,
    ).toBeGreaterThan(0);
  });
});
