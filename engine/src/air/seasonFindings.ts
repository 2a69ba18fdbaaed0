import type { Range } from '@kneewall/project';
import type { Improvement } from '../coupling/houseYear/improvements.ts';
import type { UnitYear } from '../coupling/season/unitAnswers.ts';
import type { Way, Ways } from '../coupling/ways/compareWays.ts';
import type { Draft } from '../plan/judge.ts';
import { attempt, type Outcome, required, unresolved } from '../plan/outcome.ts';
import type { PlanView } from '../plan/trade.ts';
import { recordWorking, type WorkingRecorder } from '../plan/working.ts';
import { anyFitted } from './bought.ts';
import type { Found } from './found.ts';

/** What a whole year with the chosen unit behind these ducts has to answer for. */
export const seasonFindings = ({ season, project, trades }: PlanView): Found[] => [
  roomsFollow(season.unitYear, (id) => project.house.rooms[id]?.name ?? id),
  ductsYear(season.unitYear),
  whereBuilt(season),
  ...ductsStay(season.ways, project, trades.equipment),
];

type Parts = Pick<Draft, 'id' | 'subject' | 'holdPoint' | 'consequence' | 'limit' | 'source' | 'facts'>;

function shareOf(of: Parts, value: (recorder: WorkingRecorder) => number): Found {
  const { recorder, steps } = recordWorking();
  const working = `air/${of.id}`;
  return {
    draft: { ...of, kind: 'fraction', value: attempt(() => value(recorder)), working },
    working: steps,
  };
}

/** Hours in which the unit heats. */
const heatingHours = ({ winter }: UnitYear): number =>
  winter.reduce((a, m) => a + m.stopStart + m.holding + m.helped + m.flatOut, 0);

/** The room that stays cold longest while the thermostat in another is content. */
function roomsFollow(year: Outcome<UnitYear>, nameOf: (room: string) => string): Found {
  const rooms = year.ok ? Object.entries(year.value.rooms) : [];
  const [worst] = [...rooms].sort(([a, x], [b, y]) => y.cold - x.cold || (a < b ? -1 : 1));
  const source = 'air.rooms-follow';
  const facts = worst
    ? {
        name: nameOf(worst[0]),
        lowest: worst[1].lowest,
        cold: worst[1].cold,
        thermostat: nameOf(year.ok ? year.value.thermostat : ''),
      }
    : {};
  const of = { id: 'rooms-follow', holdPoint: 'cut', consequence: 'comfort', limit: { max: 0.05 }, source } as const;
  return shareOf({ ...of, subject: worst?.[0] ?? 'house', facts }, (recorder) => {
    const hours = heatingHours(required(year));
    const cold = worst?.[1].cold ?? 0;
    recorder.step('h_heat', 'table', {}, hours, 'h', source);
    recorder.step('h_cold', 'table', {}, cold, 'h', source);
    const share = hours > 0 ? cold / hours : 0;
    recorder.step('share', 'h_cold / max(h_heat, 1)', { h_cold: cold, h_heat: hours }, share, '', source);
    return share;
  });
}

/** What of the year's heat only makes good what the ducts lose. */
function ductsYear(year: Outcome<UnitYear>): Found {
  const source = 'air.ducts-year';
  const facts = year.ok ? { lost: year.value.heating.heat - year.value.perfectDucts.heat } : {};
  const of = { id: 'ducts-year', subject: 'ducts', holdPoint: 'decide', consequence: 'money' } as const;
  return shareOf({ ...of, limit: { max: 0.15 }, source, facts }, (recorder) => {
    const { heating, perfectDucts } = required(year);
    const share = heating.heat > 0 ? (heating.heat - perfectDucts.heat) / heating.heat : 0;
    recorder.step('Q', 'table', {}, heating.heat, 'kWh', source);
    recorder.step('Q_tight', 'table', {}, perfectDucts.heat, 'kWh', source);
    recorder.step(
      'share',
      '(Q - Q_tight) / max(Q, 1e-9)',
      { Q: heating.heat, Q_tight: perfectDucts.heat },
      share,
      '',
      source,
    );
    return share;
  });
}

/** Where else the unit could stand, by what its heat takes of electricity; `wrapped` is the attic done well. */
const places: readonly Way['id'][] = ['wrapped', 'buried', 'inside', 'kneewall', 'rooms'];

/** Whether the unit is drawn in the right place: what of its electricity the best other place would save. */
function whereBuilt({ ways, improvements }: PlanView['season']): Found {
  const source = 'air.where-built';
  const of = { id: 'where-built', subject: 'ducts', holdPoint: 'decide', consequence: 'money' } as const;
  const drawn = ways.ok ? ways.value.ways.find((w) => w.id === 'as-drawn') : undefined;
  const others = ways.ok ? ways.value.ways.filter((w) => places.includes(w.id)) : [];
  const [best] = [...others].sort((a, b) => a.electricity - b.electricity || (a.id < b.id ? -1 : 1));
  const { recorder, steps } = recordWorking();
  const value = attempt((): Range => {
    required(ways);
    const { electricity: E } = drawn ?? unresolved('missing', 'routes.ducts');
    const E_best = best?.electricity ?? E;
    recorder.step('E', 'table', {}, E, 'kWh', source);
    recorder.step('E_best', 'table', {}, E_best, 'kWh', source);
    const saved = (then: number): number => (E - then) / Math.max(E, 1e-9);
    const likely = saved(E_best);
    recorder.step('share', '(E - E_best) / max(E, 1e-9)', { E, E_best }, likely, '', source);
    return { low: saved(best?.about?.high ?? E_best), likely, high: saved(best?.about?.low ?? E_best) };
  });
  const seal = improvements.ok ? improvements.value.single.find((x) => x.measures[0] === 'seal') : undefined;
  const facts = drawn && best ? placeFacts(drawn, best, seal) : {};
  const working = 'air/where-built';
  return { draft: { ...of, kind: 'fraction', value, limit: { max: 0.15 }, source, working, facts }, working: steps };
}

function placeFacts(drawn: Way, best: Way, seal: Improvement | undefined): Record<string, number | string> {
  const generator = drawn.generator !== undefined && best.generator !== undefined;
  return {
    best: best.id,
    electricity: drawn.electricity,
    elsewhere: best.electricity,
    delivered: drawn.delivered,
    costLow: best.cost.low,
    costHigh: best.cost.high,
    ...(generator ? { generator: drawn.generator ?? 0, generatorThen: best.generator ?? 0 } : {}),
    ...(seal ? { seal: seal.heatingEnergy, sealCost: seal.cost.likely } : {}),
  };
}

/** Whether ducts that are there can stay: what air the best of the cheap ways lets through, of what the unit's sheet wants. */
function ductsStay(
  ways: Outcome<Ways>,
  project: PlanView['project'],
  equipment: PlanView['trades']['equipment'],
): Found[] {
  if (!anyFitted(project)) return [];
  const source = 'air.ducts-stay';
  const chosen = equipment?.chosen.ok ? equipment.candidates[equipment.chosen.value] : undefined;
  const stated = chosen?.unit.rows.flatMap((r) => r.airflow ?? []) ?? [];
  const of = { id: 'ducts-stay', subject: 'ducts', holdPoint: 'decide', consequence: 'money' } as const;
  return [
    shareOf({ ...of, limit: { min: 0.85 }, source, facts: ways.ok ? stayFacts(ways.value) : {} }, (recorder) => {
      const { flow } = wayOf(required(ways), 'as-drawn');
      const wants = stated.length > 0 ? Math.max(...stated) : unresolved('missing', 'candidates.*.rows.*.airflow');
      recorder.step('Q', 'table', {}, flow, 'm³/s', source);
      recorder.step('Q_sheet', 'table', {}, wants, 'm³/s', source);
      recorder.step('share', 'Q / Q_sheet', { Q: flow, Q_sheet: wants }, flow / wants, '', source);
      return flow / wants;
    }),
  ];
}

const wayOf = ({ ways }: Ways, id: Way['id']): Way =>
  ways.find((w) => w.id === id) ?? unresolved('missing', 'routes.ducts');

/** What each cheap way saves of the year's electricity, kWh, and the section to change first. */
function stayFacts({ ways, changes }: Ways): Record<string, number | string> {
  const of = (id: Way['id']): Way | undefined => ways.find((w) => w.id === id);
  const [drawn, sealed, wrapped] = [of('as-drawn'), of('sealed'), of('wrapped')];
  const [first] = changes;
  return {
    ...(drawn ? { electricity: drawn.electricity, leaks: drawn.leaks } : {}),
    ...(drawn && sealed ? { sealing: drawn.electricity - sealed.electricity } : {}),
    ...(drawn && wrapped ? { wrapping: drawn.electricity - wrapped.electricity } : {}),
    ...(drawn && first ? { name: first.name, from: first.from, to: first.to, more: first.flow - drawn.flow } : {}),
  };
}
