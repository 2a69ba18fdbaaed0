import type { Range, ResolvedProject } from '@kneewall/project';
import type { AirResult } from '../air/result.ts';
import type { ClimateResult } from '../climate/result.ts';
import type { EquipmentResult, UnitRow } from '../equipment/result.ts';
import type { LoadsResult } from '../loads/result.ts';
import { noting } from '../plan/noting.ts';
import { attempt, required, unresolved } from '../plan/outcome.ts';
import { type Scenario, scenario } from '../plan/scenario.ts';
import type { TradeInput } from '../plan/trade.ts';
import type { Working, WorkingRecorder } from '../plan/working.ts';
import { timeToFreeze } from './kernels/frost.ts';
import { panHolds, timeToFill } from './kernels/pan.ts';
import { carriesHalfFull, slopeLeast } from './kernels/slope.ts';
import { type Trap, trapUnderPressure, trapUnderSuction } from './kernels/trap.ts';
import { litresAnHour } from './kernels/water.ts';
import type { CondensateResult, Frost } from './result.ts';

type Upstream = {
  readonly climate: ClimateResult;
  readonly loads: LoadsResult;
  readonly equipment: EquipmentResult;
  readonly air: AirResult;
};
export type Drain = ResolvedProject['routes']['drain'];

/** Pipe wall and a hand's breadth of slack round the trap, m. Source: `condensate.room`. */
const wall = 0.003;
/** Times its clean pressure that a filter takes before it is changed. Source: `condensate.suction`. */
const loadedTimes = 2;
/** Films over a bare pipe in still attic air, W/(m²K), and °C of water that stands in a trap. Source: `condensate.frost`. */
const film = 8;
const standing = 5;

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
  return {
    pulls,
    water,
    pressure,
    trap: attempt(() => trapAt()),
    room: noted('trap-room', (rec) => {
      const { drop, seal, room } = trapAt(rec);
      const size = s.of(drain.size);
      const least = room + size + wall;
      rec.step('h', 'H + J + d + wall', { H: drop, J: seal, d: size, wall }, least, 'm', 'condensate.room');
      return least;
    }),
    fallLeast: attempt(() => s.of(drain.run) * slopeLeast),
    filled: noted('pipe-filled', (rec) => filledOf(drain, required(water), s, rec)),
    panTime: attempt(() => panTimeOf(drain, required(water).high, s)),
    frost: noted('freezes', (rec) => frostOf(drain, upstream, s, rec)),
    along: attempt(() => ({
      run: s.of(drain.run),
      size: s.of(drain.size),
      insulation: s.of(drain.insulation),
      ...('choice' in drain.second ? { second: drain.second.choice } : {}),
    })),
    workings,
    wanted: [],
  };
}

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

function filledOf(drain: Drain, water: Range, s: Scenario, rec: WorkingRecorder): Range {
  const [run, fall, size] = [s.of(drain.run), s.of(drain.fall), s.of(drain.size)];
  if (!(run > 0)) return unresolved('missing', drain.run.path);
  const { flow } = carriesHalfFull(size, fall / run);
  const carries = flow * 3.6e6;
  if (!(carries > 0)) return unresolved('missing', drain.fall.path);
  const share = water.likely / carries;
  rec.step('carries', 'table', { d: size, slope: fall / run }, carries, 'L/h', 'condensate.manning');
  rec.step('share', 'water / carries', { water: water.likely, carries }, share, '', 'condensate.manning');
  return { low: water.low / carries, likely: share, high: water.high / carries };
}

function panTimeOf({ pan }: Drain, water: number, s: Scenario): number {
  const size = { length: s.of(pan.length), width: s.of(pan.width), depth: s.of(pan.depth) };
  const tilt = 'missing' in pan.tilt ? 0 : pan.tilt.high;
  if (!(water > 0)) return unresolved('missing', 'candidates');
  return timeToFill(panHolds(size, tilt), water);
}

/** The coldest air the drain meets at the design night, and what standing water does in it. */
function frostOf(drain: Drain, { climate, loads }: Upstream, s: Scenario, rec: WorkingRecorder): Frost {
  const outdoors = (): number => required(climate.night).outdoor.likely;
  const place = s.choice(drain.place);
  const air = place === 'inside' ? insideLeast : place === 'attic' ? required(loads.atticNight).likely : outdoors();
  rec.step('t_air', 'table', {}, air, '°C', place === 'attic' ? 'condensate.attic-night' : 'condensate.coldest');
  const inner = s.of(drain.size);
  const pipe = { inner, outer: inner + 2 * wall, insulation: s.of(drain.insulation), film };
  return { air, ...timeToFreeze(pipe, standing, air) };
}

/** °C of a heated house on its coldest night. Source: `condensate.coldest`. */
const insideLeast = 12;
