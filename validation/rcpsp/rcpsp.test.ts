import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkSource } from '../src/checkSource.ts';
import { row } from '../src/row.ts';
import { source } from './measure.ts';
import { whatIsWrong } from './published.ts';
import { readInstance } from './readInstance.ts';

checkSource(source, 72);

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

  it.each([
    ['an empty file', /[\s\S]*/, '', /empty/],
    ['a letter for a number', /(REQUESTS[\s\S]*?\n\s+7\s+1\s+)\d+/, '$1z', /^line 61: “z”/],
    ['a fraction', /(REQUESTS[\s\S]*?\n\s+7\s+1\s+)\d+/, '$13.5', /^line 61: “3.5”/],
    ['a wrong count of jobs', /\b32\b/, '33', /says 33 jobs, 32/],
    ['a wrong count of what comes after', /(\n\s+2\s+1\s+)3/, '$14', /^line 20: job 2 says 4/],
    ['a job that stands twice', /(\n\s+9\s+1\s[^\n]*)/, '$1$1', /33 have relations/],
    ['a capacity too few', /(AVAILABILITIES[^\n]*\n[^\n]*\n\s*\d+\s+\d+\s+\d+)\s+\d+/, '$1', /^line 90: .*3 have/],
    ['a request beyond its capacity', /(AVAILABILITIES[^\n]*\n[^\n]*\n\s*)\d+/, '$11', /^line 56: job 2 asks/],
    ['a circle', /(\n\s+31\s+1\s+1\s+)32/, '$12', /^line 20: job 2 comes after itself/],
    ['a job longer than any work', /(REQUESTS[\s\S]*?\n\s+7\s+1\s+)\d+/, '$1999999999', /at most 20000/],
  ])('with %s says where', (_, from, to, said) => {
    const spoilt = text('j301_1').replace(from, to);
    expect(() => readInstance(spoilt)).toThrow(said);
  });

  const plain = '4 2\n3 2\n\n0 0 0 2 2 3\n2 3 0 1 4\n3 1 2 1 4\n0 0 0 0\n';

  it('of numbers alone is read with line ends anywhere, comments and the old mark of its end', () => {
    const read = readInstance(plain);
    expect(read).toEqual({
      durations: [0, 2, 3, 0],
      needs: [
        [0, 0],
        [3, 0],
        [1, 2],
        [0, 0],
      ],
      after: [[1, 2], [3], [3], []],
      capacity: [3, 2],
    });
    for (const changed of [
      plain.replace(/\s+/g, ' '),
      plain.replace(/\s+/g, '\r\n'),
      `# by hand\n${plain}\u001A`,
      plain.replace('2 3 0', '2.0 3 0'),
    ])
      expect(readInstance(changed)).toEqual(read);
  });

  it.each([
    ['cut short', plain.slice(0, 30), /^line 5: the file ends before/],
    ['with more than its jobs', `${plain}7\n`, /^line 8: “7” stands after the last of 4 jobs/],
    ['with a letter', plain.replace('3 0 1', 'x 0 1'), /^line 5: “x” is no whole number/],
    ['with a job after none', plain.replace('1 4', '1 9'), /^line 5: job 2 is before job 9/],
    ['with a request beyond its capacity', plain.replace('2 3 0', '2 4 0'), /^line 5: job 2 asks for 4/],
    ['with a circle', plain.replace('1 4', '1 2'), /^line 5: job 2 comes after itself/],
    ['without a job', '0 2\n3 2\n', /no job/],
  ])('of numbers alone, %s, says where', (_, spoilt, said) => {
    expect(() => readInstance(spoilt)).toThrow(said);
  });

  it('whose rows are no numbers is never ok', () => {
    const truth = {
      source: 's',
      case: 'c',
      field: 'f',
      unit: '',
      tolerance: 0,
      known: 'computed',
      low: 0,
      high: 1,
    } as const;
    expect([row(truth, Number.NaN).ok, row(truth, 0.5).ok]).toEqual([false, true]);
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
