import { attempt, type Outcome, unresolved } from '../plan/outcome.ts';
import type { Published, RowName, UnitModel, UnitRow } from './result.ts';
import {
  assumedFrostTest,
  betweenLine,
  coolingLoad,
  frostedLine,
  heatingLoadOfCooling,
  lineThrough,
  type Season,
  singleSpeed,
  type Test,
  usCoolingBins,
  usCoolingSeason,
  usHeatingBins,
  usHeatingSeason,
  usRegions,
  usTests,
  variableSpeed,
} from './season/index.ts';

/** The rating is for one region. Source: `equipment.us-season`. */
const region = 'IV';
/** What stopping and starting costs where no cyclic test was run: heating, cooling. Source: `equipment.us-season`. */
const cyclic = { heating: 0.25, cooling: 0.2 } as const;
/** Variable-speed units are held against a smaller cooling load. */
const variableShare = 0.93;

/** K within which a row is the test's: sheets round °F to a tenth of a °C. */
const near = 0.35;

const rowFor = (unit: UnitModel, { mode, speed, outdoor }: RowName, within = near): UnitRow | undefined =>
  unit.rows.find((r) => r.mode === mode && r.speed === speed && Math.abs(r.outdoor - outdoor) <= within);

/** The season of the named rows, each `within` so many K of its test; where some are missing, their names. */
export function fromTests<K extends string>(
  unit: UnitModel,
  wanted: Readonly<Record<K, RowName>>,
  season: (rows: Readonly<Record<K, UnitRow>>) => Season,
  within = near,
): Published {
  const found = Object.entries<RowName>(wanted).map(([key, name]) => ({ key, name, row: rowFor(unit, name, within) }));
  const missing = found.flatMap((f) => (f.row ? [] : [f.name]));
  const rows = Object.fromEntries(found.map((f) => [f.key, f.row])) as Record<K, UnitRow>;
  const outcome: Outcome<Season> = attempt(() =>
    missing.length > 0 ? unresolved('missing', `candidates.${unit.id}.rows`) : season(rows),
  );
  return { season: outcome, missing };
}

const heat = (speed: RowName['speed'], outdoor: number): RowName => ({ mode: 'heating', speed, outdoor });
const cool = (speed: RowName['speed'], outdoor: number): RowName => ({ mode: 'cooling', speed, outdoor });

/** Whether a sheet has one speed only, which then counts as the unit's. */
function onlySpeed(unit: UnitModel): RowName['speed'] | undefined {
  const [first, ...others] = new Set(unit.rows.filter((r) => r.mode === 'heating').map((r) => r.speed));
  return others.length === 0 ? first : undefined;
}

/** The heating figure of the US rating, in heat for electricity (times 3.413 in Btu/Wh). Source: `equipment.us-season`. */
export function usHeating(unit: UnitModel): Published {
  const only = onlySpeed(unit);
  return only === undefined ? variableHeating(unit) : singleHeating(unit, only);
}

function singleHeating(unit: UnitModel, speed: RowName['speed']): Published {
  const wanted = {
    mild: heat(speed, usTests.mild),
    cold: heat(speed, usTests.cold),
    hot: cool(speed, usTests.coolHot),
  };
  return fromTests(unit, wanted, ({ mild, cold, hot }) => {
    const line = frostedLine({ mild, cold, ...frostTest(unit, heat(speed, usTests.frost)) });
    const load = heatingLoadOfCooling(hot.capacity, usRegions[region].slope, region);
    return usHeatingSeason(singleSpeed(line, cyclic.heating), load, usHeatingBins(region));
  });
}

function variableHeating(unit: UnitModel): Published {
  const wanted = {
    warm: heat('least', usTests.warm),
    lowMild: heat('least', usTests.mild),
    between: heat('between', usTests.frost),
    mild: heat('most', usTests.mild),
    cold: heat('most', usTests.cold),
    hot: cool('most', usTests.coolHot),
  };
  return fromTests(unit, wanted, ({ warm, lowMild, between, mild, cold, hot }) => {
    const low = lineThrough(usTests.warm, warm, usTests.mild, lowMild);
    const most = frostedLine({ mild, cold, ...frostTest(unit, heat('most', usTests.frost)) });
    const middle = betweenLine(low, most, usTests.frost, frosted(between));
    const load = heatingLoadOfCooling(hot.capacity, usRegions[region].slopeVariable, region);
    const speeds = { low, between: middle, most };
    return usHeatingSeason(variableSpeed(speeds, cyclic.heating), load, usHeatingBins(region));
  });
}

/** A row at 35 °F is a frost test where defrost is counted in it; else the method's own assumption stands. */
function frostTest(unit: UnitModel, name: RowName): { frost?: Test } {
  const row = rowFor(unit, name);
  return row?.defrostCounted ? { frost: row } : {};
}

/** A test at 35 °F with frost counted; where the sheet leaves it out, as the method takes it for full speed. */
const frosted = (row: UnitRow): Test => (row.defrostCounted ? row : assumedFrostTest({ mild: row, cold: row }));

/** The cooling figure of the US rating for variable speed, in heat for electricity. Source: `equipment.us-season`. */
export function usCooling(unit: UnitModel): Published {
  const wanted = {
    low: cool('least', usTests.coolLow),
    lowMild: cool('least', usTests.coolMild),
    between: cool('between', usTests.coolBetween),
    mild: cool('most', usTests.coolMild),
    hot: cool('most', usTests.coolHot),
  };
  return fromTests(unit, wanted, (rows) => {
    const low = lineThrough(usTests.coolLow, rows.low, usTests.coolMild, rows.lowMild);
    const most = lineThrough(usTests.coolMild, rows.mild, usTests.coolHot, rows.hot);
    const between = betweenLine(low, most, usTests.coolBetween, rows.between);
    const load = coolingLoad(rows.hot.capacity, variableShare);
    return usCoolingSeason(variableSpeed({ low, between, most }, cyclic.cooling), load, usCoolingBins);
  });
}
