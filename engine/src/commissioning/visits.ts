import { inOrder, type ResolvedProject } from '@kneewall/project';
import { attempt, type Outcome, required } from '../plan/outcome.ts';
import { type Scenario, scenario } from '../plan/scenario.ts';
import type { Aside, CommissioningResult, Visit } from './result.ts';
import type { Taken, VisitState } from './visit.ts';

type VisitInput = ResolvedProject['visits'][string];
type ReadingInput = ResolvedProject['readings'][string];

/** s of steady running before a reading counts. Source: `commissioning.steady`. */
const steadyLeast = 900;

const speeds = { full: 'most', mid: 'between', low: 'least' } as const;

/** The visits with the readings taken at each, and the readings that belong to none. `pressure` is that of the place, Pa. */
export function visitsOf(
  project: ResolvedProject,
  pressure: Outcome<number>,
): Pick<CommissioningResult, 'visits' | 'loose'> {
  const s = scenario();
  const read = inOrder(project.readings).map(([id, r]) => ({ id, r, taken: takenOf(id, r, s) }));
  const known = (visit: string | undefined): visit is string => visit !== undefined && visit in project.visits;
  return {
    visits: Object.fromEntries(
      inOrder(project.visits).map(([id, v]) => {
        const mine = read.flatMap(({ r, taken }) => (r.visit === id && taken ? [taken] : []));
        return [id, visitOf(id, v, [...mine, ...supplyOf(id, v, s)], project, pressure, s)];
      }),
    ),
    loose: read.flatMap(({ id, r, taken }): CommissioningResult['loose'] => {
      if (!known(r.visit)) return [{ id, lacks: 'visit' }];
      return taken ? [] : [{ id, lacks: r.expected === undefined ? 'expected' : 'value' }];
    }),
  };
}

function takenOf(id: string, r: ReadingInput, s: Scenario): Taken | undefined {
  const value = s.maybe(r.value);
  if (value === undefined || r.expected === undefined || r.expected === '') return undefined;
  return {
    id,
    expected: r.expected,
    value,
    ...('choice' in r.means ? { means: r.means.choice } : {}),
    repeats: Math.max(1, Math.round(s.of(r.repeats))),
    baseTaken: s.choice(r.baseTaken),
  };
}

/** Supply air is entered with the conditions and read like any other number. */
function supplyOf(id: string, v: VisitInput, s: Scenario): Taken[] {
  const value = s.maybe(v.supplyAir);
  if (value === undefined) return [];
  return [
    {
      id: `${id}#supply`,
      expected: 'commissioning/supply-air',
      value,
      means: 'thermometer',
      repeats: 1,
      baseTaken: 'unknown',
    },
  ];
}

function visitOf(
  id: string,
  v: VisitInput,
  taken: readonly Taken[],
  project: ResolvedProject,
  pressure: Outcome<number>,
  s: Scenario,
): Visit {
  const aside = asideOf(v, s);
  const houseBase = s.maybe(v.houseBase);
  return {
    id,
    name: v.name ?? id,
    ...(v.day === undefined ? {} : { day: v.day }),
    state: attempt(() => stateOf(v, project, required(pressure), s)),
    ...(aside ? { aside } : {}),
    ...(s.choice(v.doors) === 'shut' ? { doorsShut: true as const } : {}),
    filter: s.choice(v.filter),
    strips: s.choice(v.strips),
    ...(houseBase === undefined ? {} : { houseBase }),
    taken,
    dampers: Object.fromEntries(
      inOrder(v.dampers).flatMap(([, d]) => {
        const turned = s.maybe(d.turned);
        return d.section === undefined || turned === undefined ? [] : [[d.section, turned]];
      }),
    ),
    found: { ok: false, because: 'pending', paths: [] },
  };
}

function asideOf(v: VisitInput, s: Scenario): Aside | undefined {
  if (s.choice(v.defrost) === 'yes') return 'defrost';
  const minutes = s.maybe(v.minutes);
  if (minutes !== undefined && minutes < steadyLeast) return 'young';
  return undefined;
}

function stateOf(v: VisitInput, project: ResolvedProject, pressure: number, s: Scenario): VisitState {
  const attic = s.maybe(v.atticAir);
  const humidity = s.maybe(v.returnHumidity);
  return {
    mode: s.choice(v.mode),
    speed: speeds[s.choice(v.speed)],
    ...(v.setting ? { setting: v.setting } : {}),
    outdoor: s.of(v.outdoor),
    returnAir: s.of(v.returnAir),
    returnHumidity: humidity ?? s.of(project.house.setpoints.humidity),
    humidityRead: humidity !== undefined,
    ...(attic === undefined ? {} : { attic }),
    pressure,
  };
}
