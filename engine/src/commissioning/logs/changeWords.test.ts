import { describe, expect, it } from 'vitest';
import type { Judged } from '../../plan/judge.ts';
import { printerFor } from '../../plan/printer.ts';
import type { PlanView } from '../../plan/trade.ts';
import { logFindings } from './findings.ts';
import { logWords } from './messages.ts';
import type { LogAnswers } from './result.ts';

type Change = NonNullable<LogAnswers['change']>;
const change: Change = {
  // 3 February 2027 is day 20,852 from 1970 (Python: (date(2027, 2, 3) - date(1970, 1, 1)).days).
  day: 20_852,
  dayFrom: 20_848,
  dayTo: 20_855,
  share: 0.08,
  low: 0.06,
  high: 0.1,
  chance: 0.005,
  least: 0.05,
  of: 'power',
  by: 'heat',
};

const view = { trades: {}, project: {} } as unknown as PlanView;

/** What is said of a log with such a change. */
function said(changed: Partial<Change>) {
  const value = {
    faults: {},
    rows: 2000,
    days: 60,
    house: { lossPerDegree: { low: 1, likely: 1, high: 1 } },
    change: { ...change, ...changed },
  } as unknown as LogAnswers;
  const found = logFindings([{ id: 'a', name: 'a.csv', learned: { ok: true, value } }], view);
  const judged = found.map((f) => f.draft).find((d) => d.id === 'log-change:a');
  if (!judged) throw new Error('no finding of a change');
  return (status: Judged['status']) =>
    logWords['log-change']?.({ ...judged, status } as unknown as Judged, printerFor('si'));
}

describe('what is said of a change', () => {
  it('says the day, the range of days and sizes, and asks for the filter where heat was measured', () => {
    const words = said({})('fails');
    expect(words?.what).toBe(
      'Since 3 February 2027 (between 30 January 2027 and 6 February 2027) about 8% more power for the same heat (6% to 10%). The filter?',
    );
    expect(words?.mend).toContain('filter first');
    expect(words?.caution).toContain('licensed');
  });

  it('does not blame the unit where heat was not measured, nor for heat', () => {
    expect(said({ by: 'weather' })('fails')?.mend).toContain('look alike');
    const heat = said({ by: 'weather', of: 'heat' })('fails');
    expect(`${heat?.what} ${heat?.mend}`).not.toContain('ilter');
  });

  it('says how small a change would hide, and that nobody can tell below that', () => {
    const words = said({ chance: 0.4, least: 0.12 })('tight');
    expect(words?.what).toContain('A change of 12% in power half way through would have shown nine times of ten');
    expect(words?.mend).toContain('cannot be told');
  });
});
