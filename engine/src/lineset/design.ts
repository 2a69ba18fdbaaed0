import { inOrder, type Range, type ResolvedProject } from '@kneewall/project';
import type { EquipmentResult } from '../equipment/result.ts';
import { noting } from '../plan/noting.ts';
import { attempt, required, unresolved } from '../plan/outcome.ts';
import { type Scenario, scenario } from '../plan/scenario.ts';
import type { TradeInput } from '../plan/trade.ts';
import type { Working, WorkingRecorder } from '../plan/working.ts';
import { backingOf, boltPull } from './anchors.ts';
import { insideDrawn, insideLength, insideWay } from './inside/insideWay.ts';
import { chargeToAdd } from './kernels/charge.ts';
import { nightMost } from './nightMost.ts';
import { answerAt } from './place/answerAt.ts';
import { goodPlaces } from './place/goodPlaces.ts';
import { wallOf } from './place/wallOf.ts';
import { reachMap, waysOn } from './reach.ts';
import { refrigerantOf } from './refrigerants.ts';
import type { Asked, LinesetResult, Loop, Place, Spot, Stock, UnitBox } from './result.ts';
import { spareLoop } from './spareLoop.ts';

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
  const power = attempt(() => candidateOf(project, upstream.equipment).lineLimits.sound);
  const loud = power.ok ? s.maybe(power.value) : undefined;
  const walls = attempt(() => {
    const entered = inOrder(lineset.walls);
    if (entered.length === 0) return unresolved('missing', 'routes.lineset.walls');
    return entered.map(([id, w]) => {
      const wall = wallOf(id, w, lineset, s);
      return { wall, ways: waysOn(wall) };
    });
  });
  const asked = attempt(() => ({
    unit: required(unit),
    stock,
    slack: s.of(lineset.slack),
    ...(loud === undefined ? {} : { power: loud }),
  }));
  const spot = attempt(() => spotOf(project, required(asked), s));
  const needed = noted('needed', (rec) => neededOf(lineset, spot, s, rec));
  const set = attempt(() => setFor(stock, required(needed), lineset));
  const limits = attempt(() => candidateOf(project, upstream.equipment).lineLimits);
  const added = noted('added', (rec) => addedOf(required(limits), required(set), s, rec));
  const refrigerant = attempt(() => refrigerantOf(candidateOf(project, upstream.equipment).refrigerant ?? ''));
  return {
    stock,
    walls: attempt(() => required(walls).map(({ wall }) => wall)),
    asked,
    maps: attempt(() =>
      required(walls).flatMap(({ wall, ways }) => {
        const map = (stands: Place['stands']) => reachMap(wall, required(asked), stands, ways);
        return wall.ground.depth > 0 ? [map('wall'), map('ground')] : [map('wall')];
      }),
    ),
    places: attempt(() => goodPlaces(required(walls), { ...required(asked), more: moreOf(lineset), nightMost })),
    spot,
    insides: Object.keys(lineset.walls)
      .filter((id) => insideDrawn(lineset, id))
      .map((wall) => ({ wall, way: insideWay(lineset, wall, s) })),
    needed,
    set,
    ...(s.choice(lineset.cover) === 'channel'
      ? { channel: attempt(() => ({ legs: legsOf(required(spot)), sold: s.of(lineset.channel) })) }
      : {}),
    loop: attempt(() => loopOf(lineset, required(set).length - required(needed).likely, s)),
    once: s.choice(lineset.ends) === 'once',
    baseLeast,
    added,
    boltPull: noted('anchor', (rec) =>
      boltPull(lineset.hold, candidateOf(project, upstream.equipment).outdoorUnit, s, rec),
    ),
    ...backed(lineset, project, upstream.equipment, s),
    charge: attempt(() => s.of(required(limits).charge) + required(added)),
    ...(refrigerant.ok && typeof refrigerant.value === 'object' ? { flammable: refrigerant.value } : {}),
    workings,
    wanted: [],
  };
}

/** The panel behind the bracket, where the unit hangs and one is asked for. */
function backed(
  { place, hold }: Lineset,
  project: Pick<ResolvedProject, 'candidates'>,
  equipment: EquipmentResult,
  s: Scenario,
): Pick<LinesetResult, 'backing'> {
  if (place.wall === undefined || s.choice(place.stands) !== 'wall' || s.choice(hold.backing) !== 'panel') return {};
  return {
    backing: attempt(() => backingOf(hold, s.of(candidateOf(project, equipment).outdoorUnit.width), s)),
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
  depth: s.of(outdoorUnit.depth),
  beside: s.of(lineset.clearBeside),
  above: s.of(lineset.clearAbove),
  baseLeast,
  liftMost: s.of(lineset.liftMost),
  footing: s.of(lineset.footing),
});

/** The place that the person means, looked at as a place. */
function spotOf(project: ResolvedProject, asked: Asked, s: Scenario): Spot {
  const { lineset } = project.routes;
  const { walls, place: meant, slack } = lineset;
  const input = meant.wall === undefined ? undefined : walls[meant.wall];
  if (meant.wall === undefined || input === undefined) return unresolved('missing', 'routes.lineset.place.wall');
  const wall = wallOf(meant.wall, input, lineset, s);
  const place: Place = { stands: s.choice(meant.stands), x: s.of(meant.x), z: s.of(meant.z), out: s.of(meant.out) };
  if ('missing' in slack) return unresolved('missing', slack.path);
  const answer = answerAt(wall, waysOn(wall), asked, place);
  const { needed, fits, way, bedroom, line, neighbour } = answer;
  return {
    ...(needed === undefined ? {} : { needed: withSlack(needed - slack.likely, slack) }),
    fits,
    way,
    ...(bedroom === undefined ? {} : { bedroom }),
    ...(line === undefined ? {} : { line }),
    ...(neighbour === undefined ? {} : { neighbour }),
  };
}

/** Straight stretches of the way outside, m. */
const legsOf = ({ way }: Spot): number[] =>
  way.slice(1).flatMap(([x, z], i) => {
    const [x0, z0] = way[i] ?? [x, z];
    const long = Math.hypot(x - x0, z - z0);
    return long > 0 ? [long] : [];
  });

/** What is left of a set, as it lies. */
function loopOf({ bend, lineWide, spare }: Lineset, left: number, s: Scenario): Loop {
  const [width, depth] = [s.maybe(spare.width), s.maybe(spare.depth)];
  const room = width === undefined || depth === undefined ? undefined : Math.min(width, depth);
  return spareLoop(left, s.of(bend), s.of(lineWide), room);
}

/** m between the likely spare and the most of it. */
const moreOf = ({ slack }: Lineset): number => ('missing' in slack ? 0 : slack.high - slack.likely);

const withSlack = (way: number, slack: Range): Range => ({
  low: way + slack.low,
  likely: way + slack.likely,
  high: way + slack.high,
});

function neededOf(lineset: Lineset, spot: LinesetResult['spot'], s: Scenario, rec: WorkingRecorder): Range {
  const { run, slack } = lineset;
  if ('missing' in slack) return unresolved('missing', slack.path);
  const drawn = s.maybe(run);
  const nothingDrawn = Object.keys(lineset.walls).length === 0;
  if (drawn === undefined && nothingDrawn) return unresolved('missing', 'routes.lineset.run');
  if (spot.ok || drawn === undefined) {
    const needed = required(spot).needed ?? unresolved('out-of-range', 'routes.lineset.place.x');
    const inside = insideLength(lineset, lineset.place.wall ?? '', s);
    const out = needed.likely - slack.likely - inside;
    rec.step('L_in', 'table', {}, inside, 'm', 'lineset.way');
    rec.step('L_out', 'table', {}, out, 'm', 'lineset.way');
    const way = inside + out;
    rec.step('L_way', 'L_in + L_out', { L_in: inside, L_out: out }, way, 'm', 'lineset.way');
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
