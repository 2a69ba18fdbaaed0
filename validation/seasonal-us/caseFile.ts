import {
  betweenLine,
  btuPerWattHour,
  celsius,
  coolingLoad,
  frostedLine,
  heatingLoadOfCooling,
  inBtuPerWattHour,
  lineThrough,
  olderHeatingLoad,
  type Season,
  singleSpeed,
  type Test,
  usCoolingBins,
  usCoolingSeason,
  usHeatingBins,
  usHeatingSeason,
  usTests,
  variableSpeed,
} from '@kneewall/engine/season';
import { z } from 'zod';
import { plainCases } from '../src/plainCases.ts';
import type { Row } from '../src/row.ts';

/** Btu/h and W of a test. */
const test = z
  .tuple([z.number(), z.number()])
  .transform(([btu, power]): Test => ({ capacity: btu / btuPerWattHour, power }));
const region = z.enum(['I', 'II', 'III', 'IV', 'V', 'VI']).default('IV');
/** Btu/h: a design requirement (appendix M), or a cooling capacity and a slope (appendix M1). */
const heatingLoad = z.union([
  z.strictObject({ requirement: z.number() }),
  z.strictObject({ cooling: z.number(), slope: z.number() }),
]);
/** °F */
const cutOut = z.object({ off: z.number(), on: z.number() }).optional();
const most = z.object({ at47: test, at17: test, at35: test.optional() });
const inputs = z.union([
  z.strictObject({ kind: z.literal('single-heating'), region, cyclic: z.number(), most, load: heatingLoad, cutOut }),
  z.strictObject({
    kind: z.literal('variable-heating'),
    region,
    cyclic: z.number(),
    most,
    low: z.object({ at62: test, at47: test }),
    between: z.object({ at35: test }),
    load: heatingLoad,
    cutOut,
  }),
  z.strictObject({
    kind: z.literal('variable-cooling'),
    cyclic: z.number(),
    most: z.object({ at95: test, at82: test }),
    low: z.object({ at82: test, at67: test }),
    between: z.object({ at87: test }),
    share: z.number(),
  }),
]);
type Inputs = z.infer<typeof inputs>;
type Heating = Exclude<Inputs, { kind: 'variable-cooling' }>;

function heatingUnit(c: Heating) {
  const line = frostedLine({
    mild: c.most.at47,
    cold: c.most.at17,
    ...(c.most.at35 === undefined ? {} : { frost: c.most.at35 }),
  });
  if (c.kind === 'single-heating') return singleSpeed(line, c.cyclic);
  const low = lineThrough(usTests.warm, c.low.at62, usTests.mild, c.low.at47);
  return variableSpeed({ low, most: line, between: betweenLine(low, line, usTests.frost, c.between.at35) }, c.cyclic);
}

function season(c: Inputs): Season {
  if (c.kind === 'variable-cooling') {
    const low = lineThrough(usTests.coolLow, c.low.at67, usTests.coolMild, c.low.at82);
    const line = lineThrough(usTests.coolMild, c.most.at82, usTests.coolHot, c.most.at95);
    const between = betweenLine(low, line, usTests.coolBetween, c.between.at87);
    const unit = variableSpeed({ low, most: line, between }, c.cyclic);
    return usCoolingSeason(unit, coolingLoad(c.most.at95.capacity, c.share), usCoolingBins);
  }
  const load =
    'requirement' in c.load
      ? olderHeatingLoad(c.load.requirement / btuPerWattHour, c.region)
      : heatingLoadOfCooling(c.load.cooling / btuPerWattHour, c.load.slope, c.region);
  const stops = c.cutOut && { off: celsius(c.cutOut.off), on: celsius(c.cutOut.on) };
  return usHeatingSeason(heatingUnit(c), load, usHeatingBins(c.region), stops);
}

/** Cases of the US bin method: sums of load in Btu/h, of input and backup in Wh/h, and the seasonal factor in Btu/Wh. */
export const measureCase = (file: unknown): Row[] =>
  plainCases(file, 'seasonal-us', inputs, (c) => {
    const { heat, input, backup, ratio } = season(c);
    return { load: heat * btuPerWattHour, input, backup, 'seasonal factor': inBtuPerWattHour(ratio) };
  });
