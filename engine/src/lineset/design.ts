import { inOrder, type Range, type ResolvedProject } from '@kneewall/project';
import type { EquipmentResult } from '../equipment/result.ts';
import { noting } from '../plan/noting.ts';
import { attempt, required, unresolved } from '../plan/outcome.ts';
import { type Scenario, scenario } from '../plan/scenario.ts';
import type { TradeInput } from '../plan/trade.ts';
import type { Working, WorkingRecorder } from '../plan/working.ts';
import { boltPull } from './anchors.ts';
import { chargeToAdd } from './kernels/charge.ts';
import { soundAt } from './kernels/outdoorSound.ts';
import { fitsAt, lineTo, reachMap, waysOn } from './reach.ts';
import { refrigerantOf } from './refrigerants.ts';
import type { LinesetResult, Spot, Stock, UnitBox, Wall } from './result.ts';

type Lineset = ResolvedProject['routes']['lineset'];
type Candidate = ResolvedProject['candidates'][string];

/** m between snow and base, at the least. Source: `lineset.snow`. */
const aboveSnow = 0.1;

/** Where the outdoor unit can hang, how long the line is, and how much refrigerant that takes. Pure. */
export function design({ project, upstream }: TradeInput<'equipment'>): LinesetResult {
  const s = scenario();
  const { lineset } = project.routes;
  const workings: Record<string, Working> = {};
  const noted = noting('lineset', workings);
  const stock = stockOf(lineset, s);
  const baseLeast = noted('base', (rec) => baseOf(lineset, rec));
  const unit = attempt(() => unitBox(candidateOf(project, upstream.equipment), lineset, required(baseLeast), s));
  const spot = attempt(() => spotOf(project, upstream.equipment, required(unit), s));
  const needed = noted('needed', (rec) => neededOf(lineset, spot, s, rec));
  const set = attempt(() => setFor(stock, required(needed), lineset));
  const limits = attempt(() => candidateOf(project, upstream.equipment).lineLimits);
  const added = noted('added', (rec) => addedOf(required(limits), required(set), s, rec));
  const refrigerant = attempt(() => refrigerantOf(candidateOf(project, upstream.equipment).refrigerant ?? ''));
  return {
    stock,
    maps: attempt(() => {
      const walls = inOrder(lineset.walls).map(([id, w]) => wallOf(id, w, s));
      if (walls.length === 0) return unresolved('missing', 'routes.lineset.walls');
      return walls.map((w) => reachMap(w, required(unit), stock, s.of(lineset.slack)));
    }),
    spot,
    needed,
    set,
    baseLeast,
    added,
    boltPull: noted('anchor', (rec) =>
      boltPull(lineset.hold, candidateOf(project, upstream.equipment).outdoorUnit, s, rec),
    ),
    charge: attempt(() => s.of(required(limits).charge) + required(added)),
    ...(refrigerant.ok && typeof refrigerant.value === 'object' ? { flammable: refrigerant.value } : {}),
    workings,
    wanted: [],
  };
}

function candidateOf({ candidates }: Pick<ResolvedProject, 'candidates'>, { chosen }: EquipmentResult): Candidate {
  const id = required(chosen);
  return candidates[id] ?? unresolved('missing', `candidates.${id}`);
}

/** Lengths for sale, short to long; those not known are left out. */
const stockOf = ({ stock }: Lineset, s: Scenario): Stock[] =>
  inOrder(stock)
    .flatMap(([id, { length }]) => {
      const m = s.maybe(length);
      return m === undefined ? [] : [{ id, length: m }];
    })
    .sort((a, b) => a.length - b.length || (a.id < b.id ? -1 : 1));

function baseOf({ snow }: Lineset, rec: WorkingRecorder): number {
  if ('missing' in snow) return unresolved('missing', snow.path);
  const least = snow.high + aboveSnow;
  rec.step('z', 'snow + free', { snow: snow.high, free: aboveSnow }, least, 'm', 'lineset.snow');
  return least;
}

const unitBox = ({ outdoorUnit }: Candidate, lineset: Lineset, baseLeast: number, s: Scenario): UnitBox => ({
  width: s.of(outdoorUnit.width),
  height: s.of(outdoorUnit.height),
  beside: s.of(lineset.clearBeside),
  above: s.of(lineset.clearAbove),
  baseLeast,
});

const wallOf = (id: string, w: Lineset['walls'][string], s: Scenario): Wall => ({
  id,
  name: w.name ?? id,
  width: s.of(w.width),
  height: s.of(w.height),
  out: { x: s.of(w.outX), z: s.of(w.outZ) },
  inside: s.of(w.inside),
  things: inOrder(w.obstacles).map(([, t]) => ({
    kind: s.choice(t.kind),
    x: s.of(t.x),
    z: s.of(t.z),
    width: s.of(t.width),
    height: s.of(t.height),
  })),
});

/** The place that the person means, looked at as a place. */
function spotOf(project: ResolvedProject, equipment: EquipmentResult, unit: UnitBox, s: Scenario): Spot {
  const { walls, place, slack } = project.routes.lineset;
  const input = place.wall === undefined ? undefined : walls[place.wall];
  if (place.wall === undefined || input === undefined) return unresolved('missing', 'routes.lineset.place.wall');
  const wall = wallOf(place.wall, input, s);
  const [x, z] = [s.of(place.x), s.of(place.z)];
  if ('missing' in slack) return unresolved('missing', slack.path);
  const line = lineTo(waysOn(wall), unit, x, z);
  const straight = line === undefined ? undefined : wall.inside + line;
  const power = s.maybe(candidateOf(project, equipment).lineLimits.sound);
  const bedroom = power === undefined ? undefined : loudest(wall, unit, x, z, power);
  return {
    ...(straight === undefined ? {} : { needed: withSlack(straight, slack) }),
    fits: fitsAt(wall, unit, x, z),
    ...(bedroom === undefined ? {} : { bedroom }),
  };
}

const withSlack = (way: number, slack: Range): Range => ({
  low: way + slack.low,
  likely: way + slack.likely,
  high: way + slack.high,
});

/** dB(A) at the loudest bedroom window of the same wall: ground and wall send the sound back. Source: `lineset.sound`. */
function loudest(wall: Wall, unit: UnitBox, x: number, z: number, power: number): number | undefined {
  const from = [x + unit.width / 2, z + unit.height / 2] as const;
  const levels = wall.things
    .filter((t) => t.kind === 'bedroom')
    .map((t) => {
      const across = Math.max(t.x - from[0], from[0] - (t.x + t.width), 0);
      const up = Math.max(t.z - from[1], from[1] - (t.z + t.height), 0);
      return soundAt(power, Math.max(nearest, Math.hypot(across, up)), 2);
    });
  return levels.length === 0 ? undefined : Math.max(...levels);
}
/** m: nearer than this a unit is no point any more. */
const nearest = 0.5;

function neededOf(lineset: Lineset, spot: LinesetResult['spot'], s: Scenario, rec: WorkingRecorder): Range {
  const { run, slack } = lineset;
  if ('missing' in slack) return unresolved('missing', slack.path);
  const drawn = s.maybe(run);
  const nothingDrawn = Object.keys(lineset.walls).length === 0;
  if (drawn === undefined && nothingDrawn) return unresolved('missing', 'routes.lineset.run');
  if (spot.ok || drawn === undefined) {
    const needed = required(spot).needed ?? unresolved('out-of-range', 'routes.lineset.place.x');
    const way = needed.likely - slack.likely;
    rec.step('L_way', 'table', {}, way, 'm', 'lineset.way');
    rec.given('slack', slack);
    rec.step('L', 'L_way + slack', { L_way: way, slack: slack.likely }, way + slack.likely, 'm', 'lineset.way');
    return { ...needed, likely: way + slack.likely };
  }
  if ('missing' in run) return unresolved('missing', run.path);
  rec.given('L_way', run);
  rec.given('slack', slack);
  const likely = run.likely + slack.likely;
  rec.step('L', 'L_way + slack', { L_way: run.likely, slack: slack.likely }, likely, 'm', 'lineset.way');
  return { low: run.low + slack.low, likely, high: run.high + slack.high };
}

function setFor(stock: readonly Stock[], needed: Range, { stock: sold }: Lineset): Stock {
  if (stock.length === 0) return unresolved('missing', 'routes.lineset.stock');
  return (
    stock.find((x) => x.length >= needed.likely - 1e-9) ??
    unresolved('out-of-range', ...Object.keys(sold).map((id) => `routes.lineset.stock.${id}.length`))
  );
}

/** kg to add for the whole set, for none of it is cut off. */
function addedOf(limits: Candidate['lineLimits'], set: Stock, s: Scenario, rec: WorkingRecorder): number {
  const covered = s.of(limits.lengthCharged);
  const perMetre = set.length > covered ? s.of(limits.chargePerMetre) : (s.maybe(limits.chargePerMetre) ?? 0);
  const added = chargeToAdd(set.length, covered, perMetre);
  const inputs = { L: set.length, L_covered: covered, m: perMetre };
  rec.step('added', 'max(0, L - L_covered) * m', inputs, added, 'kg', 'lineset.charge');
  return added;
}
