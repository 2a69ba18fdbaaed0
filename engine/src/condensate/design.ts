import type { Range } from '@kneewall/project';
import type { AirResult } from '../air/result.ts';
import type { ClimateResult } from '../climate/result.ts';
import type { EquipmentResult, UnitRow } from '../equipment/result.ts';
import type { LoadsResult } from '../loads/result.ts';
import { noting } from '../plan/noting.ts';
import { attempt, required, unresolved } from '../plan/outcome.ts';
import { type Scenario, scenario } from '../plan/scenario.ts';
import type { TradeInput } from '../plan/trade.ts';
import type { Working, WorkingRecorder } from '../plan/working.ts';
import { coldestAt } from './coldest.ts';
import { timeToFreeze } from './kernels/frost.ts';
import { panHolds, timeToFill } from './kernels/pan.ts';
import { carriesHalfFull, slopeLeast } from './kernels/slope.ts';
import { type Trap, trapUnderPressure, trapUnderSuction } from './kernels/trap.ts';
import { litresAnHour } from './kernels/water.ts';
import { hasSecondLine, pumpedOf, risersOf, yearOfWater } from './lifts.ts';
import type { Along, CondensateResult, Drain, Frost, Stretch } from './result.ts';
import { coldPipe, frostsAt, standing, stretchesOf, wall, winterOf } from './stretches.ts';

type Upstream = {
  readonly climate: ClimateResult;
  readonly loads: LoadsResult;
  readonly equipment: EquipmentResult;
  readonly air: AirResult;
};
/** Times its clean pressure that a filter takes before it is changed. Source: `condensate.suction`. */
const loadedTimes = 2;

/** Water, trap, fall, pan and frost of the drain. Pure; what is not known blinds only what hangs on it. */
export function design({ project, upstream }: TradeInput<keyof Upstream>): CondensateResult {
  const s = scenario();
  const { drain } = project.routes;
  const workings: Record<string, Working> = {};
  const noted = noting('condensate', workings);
  const pulls = s.choice(drain.blower) === 'after';
  const water = attempt(() => waterOf(upstream.equipment));
  const pressure = attempt(() => pressureOf(drain, upstream.air, pulls));
  const trapAt = (rec?: WorkingRecorder): Trap => {
    const { high } = required(pressure);
    return pulls ? trapUnderSuction(high, rec) : trapUnderPressure(high, rec);
  };
  const stretches = attempt(() => stretchesOf(drain, upstream.loads, s));
  const along = attempt(() => alongOf(drain, required(stretches), s));
  const fallLeast = attempt(() => runOf(drain, s) * slopeLeast);
  const room = noted('trap-room', (rec) => {
    const { drop, seal, room: both } = trapAt(rec);
    const size = s.of(drain.size);
    const least = both + size + wall;
    rec.step('h', 'H + J + d + wall', { H: drop, J: seal, d: size, wall }, least, 'm', 'condensate.room');
    return least;
  });
  return {
    pulls,
    water,
    pressure,
    trap: attempt(() => trapAt()),
    room,
    fallLeast,
    filled: noted('pipe-filled', (rec) => filledOf(drain, required(stretches), required(water), s, rec)),
    panTime: attempt(() => panTimeOf(drain, required(water).high, s)),
    frost: noted('freezes', (rec) => frostOf(drain, upstream, stretches.ok ? stretches.value : [], s, rec)),
    along,
    stretches,
    risers: noted('risers', (rec) => risersOf(drain, { room, fallLeast, along }, s, rec)),
    secondLine: attempt(() => {
      const { run, fall } = drain.secondLine;
      if (!hasSecondLine(drain)) return unresolved('missing', drain.second.path);
      return { run: s.of(run), fall: s.of(fall), least: s.of(run) * slopeLeast };
    }),
    ...(s.choice(drain.pump.used) === 'yes' ? { pumped: noted('pump', (rec) => pumpedOf(drain, s, rec)) } : {}),
    waterYear: attempt(() => {
      const { latentMonths, latentPeak } = required(upstream.loads.year).cooling;
      return yearOfWater(latentMonths, latentPeak);
    }),
    workings,
    wanted: [],
  };
}

/** m of pipe from the trap to the end: of all stretches, where there are any. */
function runOf(drain: Drain, s: Scenario): number {
  const entered = Object.values(drain.stretches);
  return entered.length === 0 ? s.of(drain.run) : entered.reduce((sum, of) => sum + s.of(of.run), 0);
}

const alongOf = (drain: Drain, stretches: readonly Stretch[], s: Scenario): Along => ({
  run: runOf(drain, s),
  fall: stretches.reduce((sum, { fall }) => sum + fall, 0),
  size: s.of(drain.size),
  insulation: s.of(drain.insulation),
  pump: s.choice(drain.pump.used) === 'yes',
  float: s.choice(drain.float) === 'yes',
  ...('choice' in drain.second ? { second: drain.second.choice } : {}),
});

/** The most water a data sheet's cooling rows make; a row without a sensible share stands for 0.7 to 0.85 of it. */
function waterOf({ chosen, candidates }: EquipmentResult): Range {
  const id = required(chosen);
  const rows = candidates[id]?.unit.rows.filter((r) => r.mode === 'cooling' && r.speed !== 'least') ?? [];
  if (rows.length === 0) return unresolved('missing', `candidates.${id}.rows`);
  const litres = rows.map(rowLitres);
  const most = (end: keyof Range): number => Math.max(...litres.map((l) => l[end]));
  return { low: most('low'), likely: most('likely'), high: most('high') };
}

/** Shares where the sheet has none. Source: `condensate.share`. */
const shares: Range = { low: 0.7, likely: 0.77, high: 0.85 };

function rowLitres({ capacity, sensibleShare }: UnitRow): Range {
  const at = (share: number): number => litresAnHour(capacity, share);
  if (sensibleShare !== undefined)
    return { low: at(sensibleShare), likely: at(sensibleShare), high: at(sensibleShare) };
  return { low: at(shares.high), likely: at(shares.likely), high: at(shares.low) };
}

/** Suction: the return's worst way, the filter loaded, the wet coil. Pressure: the supply's worst way. Pa. */
function pressureOf(drain: Drain, { ladder, flows }: AirResult, pulls: boolean): Range {
  if ('missing' in drain.coil) return unresolved('missing', drain.coil.path);
  const rungs = required(ladder);
  const { filterPressure } = required(flows);
  const along = (side: 'supply' | 'return') => rungs.filter((r) => r.side === side).reduce((sum, r) => sum + r.drop, 0);
  if (!pulls) {
    const supply = along('supply');
    return { low: supply, likely: supply, high: supply };
  }
  const { low, likely, high } = drain.coil;
  const [clean, loaded] = [along('return') + filterPressure, along('return') + loadedTimes * filterPressure];
  return { low: clean + low, likely: loaded + likely, high: loaded + high };
}

/** Where it is flattest it carries least. */
function filledOf(drain: Drain, stretches: readonly Stretch[], water: Range, s: Scenario, rec: WorkingRecorder): Range {
  const size = s.of(drain.size);
  const slope = stretches.reduce((least, { run, fall }) => Math.min(least, fall / run), Number.POSITIVE_INFINITY);
  const { flow } = carriesHalfFull(size, slope);
  const carries = flow * 3.6e6;
  if (!(carries > 0)) return unresolved('missing', drain.fall.path);
  const share = water.likely / carries;
  rec.step('carries', 'table', { d: size, slope }, carries, 'L/h', 'condensate.manning');
  rec.step('share', 'water / carries', { water: water.likely, carries }, share, '', 'condensate.manning');
  return { low: water.low / carries, likely: share, high: water.high / carries };
}

function panTimeOf({ pan }: Drain, water: number, s: Scenario): number {
  const size = { length: s.of(pan.length), width: s.of(pan.width), depth: s.of(pan.depth) };
  const tilt = 'missing' in pan.tilt ? 0 : pan.tilt.high;
  if (!(water > 0)) return unresolved('missing', 'candidates');
  return timeToFill(panHolds(size, tilt), water);
}

/**
 * The coldest air that standing water meets, in the trap and where the drain does not fall, and what it does to it: of the
 * design night, and of the house's own year once that is known.
 */
function frostOf(
  drain: Drain,
  upstream: Upstream,
  stretches: readonly Stretch[],
  s: Scenario,
  rec: WorkingRecorder,
): Frost {
  const trap = s.choice(drain.place);
  const stands = stretches.filter((one) => one.id !== '' && one.place !== 'inside' && !one.falls);
  const places = [trap, ...stands.map((one) => one.place)].map((place) => ({ place, air: coldestAt(place, upstream) }));
  const least = (end: keyof Range): number => Math.min(...places.map(({ air }) => air[end]));
  const air = { low: least('low'), likely: least('likely'), high: least('high') };
  const source = trap === 'attic' ? 'condensate.attic-night' : 'condensate.coldest';
  rec.step('t_low', 'table', {}, air.low, '°C', source);
  rec.step('t_air', 'table', {}, air.likely, '°C', source);
  const [size, insulation] = [s.of(drain.size), s.of(drain.insulation)];
  const coldest = places.find((one) => one.air.likely === air.likely)?.place ?? trap;
  const frosts = frostsAt(coldest, upstream.loads);
  // Where only the unfavourable end freezes, that end says how fast.
  const freezing = air.likely < 0 ? air.likely : air.low;
  return {
    air,
    ...(freezing < 0 ? timeToFreeze(coldPipe(size, insulation), standing, freezing) : {}),
    ...(frosts ? { winter: winterOf(frosts, size, insulation) } : {}),
    standing: stands.map((one) => one.name),
  };
}
