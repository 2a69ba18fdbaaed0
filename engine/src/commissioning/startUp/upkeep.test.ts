import { expect, it } from 'vitest';
import { upkeepFrom } from './upkeep.ts';

const months = [-4, -3, 1, 5, 10, 14, 17, 17, 13, 9, 4, -1].map((mean, i) => ({
  ...{ month: i + 1, mean, dailyRange: 6, relativeHumidity: 0.8, wind: 4, clearness: 0.5, sun: 3 },
}));

it('gives every look its first day after the work, across the end of a year too', () => {
  expect(upkeepFrom('2027-05-25', months)).toEqual([
    { task: 'commissioning/first-week', day: '2027-06-01' },
    { task: 'commissioning/filter', day: '2027-06-24', everyMonths: 1 },
    // November: 4 °C in the mean, 1 °C in the morning.
    { task: 'commissioning/first-frost', day: '2027-11-01' },
    { task: 'commissioning/each-season', day: '2027-10-01', everyMonths: 12 },
    { task: 'commissioning/each-season', day: '2028-04-01', everyMonths: 12 },
  ]);
  const late = upkeepFrom('2027-12-30', months);
  expect(late.map((u) => u.day)).toEqual(['2028-01-06', '2028-01-29', '2028-01-01', '2028-04-01', '2028-10-01']);
});

it('leaves the frost out where no month has any, and where nobody knows', () => {
  const warm = months.map((m) => ({ ...m, mean: m.mean + 20 }));
  for (const climate of [warm, []])
    expect(upkeepFrom('2027-05-25', climate).map((u) => u.task)).not.toContain('commissioning/first-frost');
});
