import { describe, expect, it } from 'vitest';
import type { ValidationSource } from './row.ts';

/** The one test of every source: rows are there, none was dropped, each within its tolerance. */
export function checkSource(source: ValidationSource, rows: number): void {
  describe(source.title, () => {
    const measured = source.measure();
    it(`has its ${rows} rows`, () => {
      expect(measured.length).toBe(rows);
    });
    it.each(measured.map((r) => [`${r.case} ${r.field} (${r.known})`, r] as const))('%s', (_name, r) => {
      expect(
        r,
        `expected ${r.expected ?? `${r.low} to ${r.high}`} ${r.unit}, ours ${r.ours}, error ${r.error}`,
      ).toMatchObject({ ok: true });
    });
  });
}
