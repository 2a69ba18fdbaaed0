import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { checkSource } from '../src/checkSource.ts';
import { source } from './measure.ts';

checkSource(source, 315);

const file = JSON.parse(readFileSync(new URL('./case.json', import.meta.url), 'utf8')) as object;

it('reads a case file, and refuses one of another shape', () => {
  const rows = source.measureCase?.(file, '') ?? [];
  expect(rows.length).toBeGreaterThan(0);
  expect(rows.filter((r) => !r.ok)).toEqual([]);
  expect(() => source.measureCase?.({ ...file, source: 'another' }, '')).toThrow();
});
