import type { Given, Range, ResolvedProject } from '@kneewall/project';
import { inOrder } from '@kneewall/project';
import { humidityRatio } from '../physics/air/index.ts';
import { attempt, type Outcome, required, unresolved } from '../plan/outcome.ts';
import { type Scenario, type Spread, scenario, spread } from '../plan/scenario.ts';
import type { TradeInput } from '../plan/trade.ts';
import { recordWorking, type Working } from '../plan/working.ts';
import { correctionsOf } from './corrections.ts';
import { heatingOutput } from './heating.ts';
import { ownSeason, type Upstream } from './ownSeason.ts';
import { usCooling, usHeating } from './published.ts';
import { europeanHeating } from './publishedEurope.ts';
import { rank } from './ranking.ts';
import type { Candidate, EquipmentResult, UnitModel } from './result.ts';
import { balancePoint, cyclingHours, heatingHours, helpedHours } from './season.ts';
import { betweenRows, readSheet } from './sheet.ts';
import { unitAt } from './unitAt.ts';
import { asBought, blowerModel, type CandidateInput, unitModel } from './unitModel.ts';
import { winterOf } from './winter.ts';

/** What each candidate gives at the cold night and the hot hour, how long it cycles, and what it draws. Pure. */
export function design({ project, upstream }: TradeInput<'climate' | 'loads'>): EquipmentResult {
  const workings: Record<string, Working> = {};
  const candidates = Object.fromEntries(
    inOrder(project.candidates).map(([id, input]) => [id, candidateOf(id, input, project, upstream, workings)]),
  );
  return { candidates, chosen: chosenOf(candidates), ranking: rank(Object.values(candidates)), workings, wanted: [] };
}

/** The one that is marked, or the only one. */
function chosenOf(candidates: Readonly<Record<string, Candidate>>): Outcome<string> {
  const all = Object.values(candidates);
  const marked = all.filter((c) => c.chosen);
  const [one] = marked.length > 0 ? marked : all.length === 1 ? all : [];
  return attempt(() => one?.id ?? unresolved('missing', 'candidates'));
}

function candidateOf(
  id: string,
  input: CandidateInput,
  project: ResolvedProject,
  upstream: Upstream,
  workings: Record<string, Working>,
): Candidate {
  const s = scenario();
  const { recorder, steps } = recordWorking();
  const model = attempt(() => unitModel(id, input, s));
  const unit: UnitModel = model.ok ? model.value : { id, name: input.name ?? id, rows: [] };
  const sheet = unit.drawTimes === undefined ? unit : unitModel(id, asBought(input), s);
  const blower = attempt(() => blowerModel(input, s));
  const night = attempt(() => {
    required(model);
    heatingOutput(unit, required(upstream.climate.night).outdoor, required(upstream.climate.pressure), s, recorder);
    return spread((x) =>
      heatingOutput(unit, required(upstream.climate.night).outdoor, required(upstream.climate.pressure), x),
    );
  });
  workings[`equipment/heating-capacity:${id}`] = steps;
  const cooling = attempt(() => coolingOutput(unit, project, upstream));
  const load = attempt(() => asGiven('loads.heating', required(upstream.loads.heating)));
  return {
    id,
    name: unit.name,
    chosen: input.chosen,
    unit,
    blower: blower.ok ? blower.value : { kind: 'torque', tables: [], filterIncluded: false },
    heatingCapacity: attempt(() => required(night).capacity),
    heatingSpare: attempt(() => spareOf(required(night).capacity, required(load))),
    coolingSensible: attempt(() => required(cooling).sensible),
    coolingSpare: attempt(() => required(cooling).spare),
    balancePoint: attempt(() => balancePoint(unit, upstream)),
    cyclingHours: attempt(() => cyclingHours(unit, upstream)),
    heatingHours: attempt(() => heatingHours(upstream)),
    helpedHours: attempt(() => helpedHours(unit, upstream, s.maybe(input.outdoorLeast))),
    winter: attempt(() => winterOf(unit, upstream, s.maybe(input.outdoorLeast))),
    seasons: {
      own: attempt(() => ownSeason(unit, upstream, s.maybe(input.outdoorLeast))),
      // Published figures are those of the sheet, whatever this one draws.
      usHeating: usHeating(sheet),
      usCooling: usCooling(sheet),
      europe: europeanHeating(sheet),
    },
    designCop: attempt(() => required(night).cop.likely),
    powerMost: attempt(() => drawn(input, s)),
  };
}

/** An upstream spread as an input of this trade. */
const asGiven = (path: string, x: Spread): Given => ({
  path,
  kind: 'power',
  known: 'estimated',
  low: x.low,
  likely: x.likely,
  high: x.high,
});

/** Capacity less load; the two vary apart. */
function spareOf(capacity: Spread, load: Given): Spread {
  const supply = asGiven('candidates', capacity);
  return spread((s: Scenario) => ({ spare: s.of(supply) - s.of(load) })).spare;
}

function coolingOutput(
  unit: UnitModel,
  project: ResolvedProject,
  { climate, loads }: Upstream,
): { sensible: Spread; spare: Spread } {
  const load = required(loads.cooling);
  const day = required(climate.day);
  const pressure = required(climate.pressure);
  const { cooling, humidity } = project.house.setpoints;
  const outputs = spread((s) => {
    const indoor = s.of(cooling);
    const hot =
      (day.hours.find((h) => h.hour === load.hour)?.outdoor ?? day.outdoor.likely) +
      s.of(day.outdoor) -
      day.outdoor.likely;
    const coolest = Math.min(
      ...unit.rows.filter((r) => r.mode === 'cooling' && r.speed === 'most').map((r) => r.outdoor),
    );
    // Cooler than its coolest row a unit gives no less than at that row.
    const outdoor = Math.max(hot, coolest);
    const sheet = readSheet(unit, 'cooling', 'most', outdoor);
    const enteringHumidity = humidityRatio({ t: indoor, rh: s.of(humidity) }, pressure);
    const flow = betweenRows(sheet, (r) => r.airflow) ?? unresolved('missing', `candidates.${unit.id}.rows`);
    const out = required(
      unitAt(
        unit,
        { mode: 'cooling', outdoor, entering: indoor, enteringHumidity, flow, pressure, speed: 'most' },
        correctionsOf(unit, s),
      ),
    );
    return { sensible: out.sensible, spare: out.sensible - s.of(asGiven('loads.cooling', load.sensible)) };
  });
  return outputs;
}

/** W at once, without and with the backup strips. */
function drawn(input: CandidateInput, s: Scenario): Range {
  const without = s.of(input.electrics.powerMost);
  return { low: without, likely: without, high: without + s.of(input.electrics.strips) };
}
