import type { ExpectedReading } from '../plan/lines.ts';
import { readingName, readingWords } from './readingWords.ts';
import type { CommissioningResult } from './result.ts';

/** What the last visit's numbers should be in its own state, beside what the trades expect at the plan's. */
export function readings({ visits }: CommissioningResult): readonly ExpectedReading[] {
  const last = Object.values(visits).findLast((v) => v.found.ok);
  if (!last?.found.ok) return [];
  return last.found.value.expected.flatMap(({ id, value, band, subject }): ExpectedReading[] => {
    const words = readingWords[id.split(':')[0] ?? id];
    if (!words || !id.startsWith('commissioning/')) return [];
    return [
      {
        id,
        trade: 'commissioning',
        what: `${readingName(id, subject ?? '')}, at “${last.name}”`,
        how: words.how,
        kind: words.kind,
        expected: value,
        good: band,
      },
    ];
  });
}
