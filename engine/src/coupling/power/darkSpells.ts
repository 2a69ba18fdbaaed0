import type { PowerRun } from './runWay.ts';

/** Days on end with sun for less than half of what is drawn: the longest of the year, and the longest without any want. */
export type DarkSpells = { readonly longest: number; readonly survived: number };

const half = 0.5;

/** Spells of a run without its generator, against what the house would draw with all the power it wants. */
export function darkSpells({ record, sun, hours }: PowerRun, unlimited: PowerRun): DarkSpells {
  const perDay = Math.round(24 / hours);
  let [longest, survived, dark, well] = [0, 0, 0, true];
  for (let day = 0; (day + 1) * perDay <= sun.length; day++) {
    let [given, drawn, want] = [0, 0, false];
    for (let i = day * perDay; i < (day + 1) * perDay; i++) {
      const { unit, household, standing } = unlimited.record;
      given += sun[i] ?? 0;
      drawn += (unit[i] ?? 0) + (household[i] ?? 0) + (standing[i] ?? 0);
      want ||= (record.held[i] ?? 0) > 0 || (record.short[i] ?? 0) > 1;
    }
    const isDark = given < half * drawn;
    dark = isDark ? dark + 1 : 0;
    well = isDark ? (dark === 1 || well) && !want : true;
    longest = Math.max(longest, dark);
    if (isDark && well) survived = Math.max(survived, dark);
  }
  return { longest, survived };
}
