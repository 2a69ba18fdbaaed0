import type { ResolvedProject } from '@kneewall/project';
import type { ClimateResult } from '../../climate/result.ts';
import { sheetOnly } from '../../coupling/logFit/sheetOnly.ts';
import type { EquipmentResult } from '../../equipment/result.ts';
import type { Job, Results } from '../../jobs/job.ts';
import { attempt, required, unresolved } from '../../plan/outcome.ts';
import { scenario } from '../../plan/scenario.ts';
import { logFitJob, logFitKind, type PlannedHouse, type PlannedUnit, readingOfLog } from './logJob.ts';
import type { Log, LogAnswers } from './result.ts';

const seaLevel = 101_325;

type Asked = Pick<ResolvedProject, 'logs' | 'site' | 'house' | 'candidates'>;

/** The project's logs, each waiting for its job; and the jobs. */
export function logsOf(
  project: Asked,
  equipment: EquipmentResult,
  climate: ClimateResult,
): { readonly logs: readonly Log[]; readonly wanted: readonly Job[] } {
  const wanted: Job[] = [];
  const logs = Object.entries(project.logs).map(([id, log]): Log => {
    const learned = attempt((): LogAnswers => {
      if (log.blob === undefined) return unresolved('missing', `logs.${id}.blob`);
      const { airflow } = log;
      const unit = attempt(() => unitOf(project, equipment, required(climate.pressure)));
      const plan = attempt(() => houseOf(project, climate));
      const given = {
        density: required(climate.pressure) / seaLevel,
        ...('missing' in airflow ? {} : { airflow: airflow.likely }),
        ...(unit.ok ? { unit: unit.value } : {}),
      };
      const read = readingOfLog(log, project.site);
      const job = logFitJob({ blob: log.blob, read, given, ...(plan.ok ? { plan: plan.value } : {}) });
      if (wanted.every((j) => j.key !== job.key)) wanted.push(job);
      return unresolved('pending', job.key);
    });
    return { id, name: log.name ?? id, learned };
  });
  return { logs, wanted };
}

/** The plan's house as entered: a log is held against that, whatever was taken from it since. */
function houseOf({ house, site }: Asked, climate: ClimateResult): PlannedHouse {
  const { learned: _, ...entered } = house;
  const months = required(climate.months).map((m) => m.mean);
  return { house: entered, site, pressure: required(climate.pressure), months, weather: required(climate.year) };
}

function unitOf({ candidates }: Asked, equipment: EquipmentResult, pressure: number): PlannedUnit {
  const id = required(equipment.chosen);
  const model = equipment.candidates[id]?.unit;
  const electrics = candidates[id]?.electrics;
  if (!model || !electrics || model.rows.every((r) => r.mode !== 'heating')) unresolved('missing', 'candidates');
  return { model: sheetOnly(model), pressure, standby: scenario().of(electrics.standby) };
}

/** The logs with what their finished jobs found. */
export function learnLogs(logs: readonly Log[], wanted: readonly Job[], found: Results): readonly Log[] {
  return logs.map((log): Log => {
    const { learned } = log;
    if (learned.ok || learned.because !== 'pending') return log;
    const job = wanted.find((j) => j.kind === logFitKind && learned.paths.includes(j.key) && j.key in found);
    return job ? { ...log, learned: { ok: true, value: found[job.key] as LogAnswers } } : log;
  });
}
