import {
  betweenLine,
  btuPerWattHour,
  celsius,
  frostedLine,
  lineThrough,
  singleSpeed,
  type Test,
  usTests,
  variableSpeed,
} from '@kneewall/engine/season';

/** Btu/h and W of a test, as the method states them. */
export const test = (btu: number, power: number): Test => ({ capacity: btu / btuPerWattHour, power });

/** An invented single-speed unit, without a frost test. */
export const singleTests = { mild: test(35_200, 2950), cold: test(21_600, 2560) } as const;
export const single = singleSpeed(frostedLine(singleTests), 0.25);
export const singleLine = frostedLine(singleTests);

/** An invented variable-speed unit. */
const lowHeating = lineThrough(usTests.warm, test(11_200, 520), usTests.mild, test(9000, 560));
const mostHeating = frostedLine({ mild: test(26_000, 2050), frost: test(22_400, 2150), cold: test(17_800, 1950) });
export const heatingSpeeds = {
  low: lowHeating,
  most: mostHeating,
  between: betweenLine(lowHeating, mostHeating, usTests.frost, test(14_200, 1080)),
} as const;
export const variableHeating = variableSpeed(heatingSpeeds, 0.25);

const lowCooling = lineThrough(usTests.coolLow, test(10_900, 400), usTests.coolMild, test(10_200, 520));
const mostCooling = lineThrough(usTests.coolMild, test(25_600, 1650), usTests.coolHot, test(24_000, 1920));
export const coolingSpeeds = {
  low: lowCooling,
  most: mostCooling,
  between: betweenLine(lowCooling, mostCooling, celsius(87), test(17_200, 1050)),
} as const;
export const variableCooling = variableSpeed(coolingSpeeds, 0.2);
