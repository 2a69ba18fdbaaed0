import { inOrder, type Project, type Resolved } from '@kneewall/project';
import type { Scenario } from '../plan/scenario.ts';
import { heldAirflow } from './blowerCurve.ts';
import type { BlowerModel, UnitModel, UnitRow } from './result.ts';

export type CandidateInput = Resolved<NonNullable<Project['candidates']>>[string];

/** The data sheet in plain numbers. Ends the enclosing attempt where a row lacks its temperature, capacity or power. */
export function unitModel(id: string, input: CandidateInput, s: Scenario): UnitModel {
  const times = s.maybe(input.learned.power) ?? 1;
  const rows = inOrder(input.rows).map(([, row]): UnitRow => {
    const wetBulb = s.maybe(row.indoorWetBulb);
    const airflow = s.maybe(row.airflow);
    const sensibleShare = s.maybe(row.sensibleShare);
    const mode = s.choice(row.mode);
    return {
      mode,
      speed: s.choice(row.speed),
      outdoor: s.of(row.outdoor),
      indoor: s.of(row.indoor),
      capacity: s.of(row.capacity),
      power: s.of(row.power) * (mode === 'heating' ? times : 1),
      defrostCounted: s.choice(row.defrostCounted) === 'yes',
      ...(wetBulb === undefined ? {} : { indoorWetBulb: wetBulb }),
      ...(airflow === undefined ? {} : { airflow }),
      ...(sensibleShare === undefined ? {} : { sensibleShare }),
    };
  });
  return { id, name: input.name ?? id, rows, ...(times === 1 ? {} : { drawTimes: times }) };
}

/** The candidate as its papers have it, without what a log taught. */
export const asBought = (input: CandidateInput): CandidateInput => ({
  ...input,
  learned: { ...input.learned, power: { path: input.learned.power.path, missing: true } },
});

/** The blower tables in plain numbers, each in order of rising flow; of one that holds its airflow, the curve it follows. */
export function blowerModel(input: CandidateInput, s: Scenario): BlowerModel {
  const staticMost = s.maybe(input.blower.staticMost);
  const kind = s.choice(input.blower.kind);
  const tables = inOrder(input.blower.speeds).map(([setting, speed]) => {
    const points = inOrder(speed.points).map(([, p]) => {
      const power = s.maybe(p.power);
      return { flow: s.of(p.flow), pressure: s.of(p.pressure), ...(power === undefined ? {} : { power }) };
    });
    return {
      setting,
      points: kind === 'airflow' ? heldAirflow(points, staticMost) : points.sort((a, b) => a.flow - b.flow),
    };
  });
  return {
    kind,
    tables,
    filterIncluded: s.choice(input.blower.filterIncluded) === 'yes',
    ...(staticMost === undefined ? {} : { staticMost }),
  };
}
