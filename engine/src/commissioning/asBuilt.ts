import type { AirModel } from '../air/ductwork.ts';
import type { ResponsesInputs } from '../coupling/asBuilt/system.ts';
import type { BlowerModel, BlowerTable, Candidate, UnitModel } from '../equipment/result.ts';
import { required, unresolved } from '../plan/outcome.ts';
import { scenario } from '../plan/scenario.ts';
import type { TradeInput } from '../plan/trade.ts';
import type { Visit } from './result.ts';
import type { VisitState } from './visit.ts';

export type Input = TradeInput<'climate' | 'loads' | 'equipment' | 'air'>;
type Speed = VisitState['speed'];

/** The plan's system in the state of a visit. Ends the enclosing attempt where something of it is missing. */
export function asBuilt({ project, upstream }: Input, visit: Visit): ResponsesInputs {
  const state = required(visit.state);
  const { equipment, loads } = upstream;
  const chosen = equipment.candidates[required(equipment.chosen)] ?? unresolved('missing', 'candidates');
  const planned = required(upstream.air.model);
  const s = scenario();
  const electrics = project.candidates[chosen.id]?.electrics;
  const strips = electrics ? s.of(electrics.strips) : 0;
  const { blower, unit } = chosen;
  const table = tableAt(state, chosen, planned);
  return {
    system: {
      air: { ...planned, blower: table },
      unit,
      blower,
      attic: required(loads.attic),
      strips,
      stripsOn: visit.strips === 'on' ? strips : 0,
      standing: electrics ? s.of(electrics.standby) : 0,
      ...(visit.doorsShut ? { house: required(upstream.air.shut).house } : {}),
      ...(loads.lossPerDegree.ok ? { loss: loads.lossPerDegree.value.likely } : {}),
      state: { ...state, speed: speedWithRows(unit, state) },
    },
    settings: blower.tables
      .filter((t) => t.setting !== table.setting && t.points.length >= 2)
      .map((t) => atSpeed(t, state.speed, unit, blower)),
    speeds: otherSpeeds(unit, state).map((speed) => ({
      speed,
      blower: tableAt({ ...state, speed }, chosen, planned),
    })),
  };
}

/** Between its least and most a unit may be listed at one speed or the other. */
function speedWithRows(unit: UnitModel, { mode, speed }: VisitState): Speed | 'rated' {
  const has = (at: string) => unit.rows.some((r) => r.mode === mode && r.speed === at);
  return speed === 'between' && !has('between') && has('rated') ? 'rated' : speed;
}

const allSpeeds: readonly Speed[] = ['most', 'between', 'least'];
const otherSpeeds = (unit: UnitModel, { mode, speed }: VisitState): Speed[] =>
  allSpeeds.filter((s) => s !== speed && unit.rows.some((r) => r.mode === mode && r.speed === s));

/** The setting that was named, else the planned one, slowed as the sheet's airflow says. */
function tableAt(state: VisitState, { blower, unit }: Candidate, planned: AirModel): BlowerTable {
  if (state.setting !== undefined) {
    const named = blower.tables.find((t) => t.setting === state.setting && t.points.length >= 2);
    return named ?? unresolved('missing', 'visits.*.setting');
  }
  return atSpeed(planned.blower, state.speed, unit, blower);
}

/**
 * A table at a slower speed: the blower follows the compressor in the ratio of the airflows that the sheet states, by
 * the fan laws; one that holds its airflow keeps its pressure. Without a stated airflow it stays. Source:
 * `commissioning.slow-blower`.
 */
function atSpeed(table: BlowerTable, speed: Speed, unit: UnitModel, { kind }: BlowerModel): BlowerTable {
  const flowAt = (s: string): number | undefined => {
    const stated = unit.rows.flatMap((r) => (r.speed === s && r.airflow !== undefined ? [r.airflow] : []));
    return stated.length > 0 ? stated.reduce((a, b) => a + b, 0) / stated.length : undefined;
  };
  const [most, own] = [flowAt('most'), flowAt(speed)];
  if (speed === 'most' || most === undefined || own === undefined || own >= most) return table;
  const k = own / most;
  return {
    ...table,
    points: table.points.map(({ flow, pressure, power }) => ({
      flow: flow * k,
      pressure: kind === 'airflow' ? pressure : pressure * k ** 2,
      ...(power === undefined ? {} : { power: power * k ** 3 }),
    })),
  };
}
