import type { ResolvedProject } from '@kneewall/project';
import type { EquipmentResult } from '../../equipment/result.ts';
import type { Job } from '../../jobs/job.ts';
import { attempt, type Outcome, required, unresolved } from '../../plan/outcome.ts';
import type { Results } from '../../plan/trade.ts';
import { logFitJob, logFitKind, readingOfLog } from './logJob.ts';
import { speedLines } from './plannedPower.ts';
import type { Log, LogAnswers } from './result.ts';

const seaLevel = 101_325;

/** The project's logs, each waiting for its job; and the jobs. `pressure` of outdoor air, Pa. */
export function logsOf(
  project: Pick<ResolvedProject, 'logs' | 'site'>,
  equipment: EquipmentResult,
  pressure: Outcome<number>,
): { readonly logs: readonly Log[]; readonly wanted: readonly Job[] } {
  const { chosen, candidates } = equipment;
  const unit = chosen.ok ? candidates[chosen.value]?.unit : undefined;
  const wanted: Job[] = [];
  const logs = Object.entries(project.logs).map(([id, log]): Log => {
    const learned = attempt((): LogAnswers => {
      if (log.blob === undefined) return unresolved('missing', `logs.${id}.blob`);
      const { airflow } = log;
      const given = {
        lines: unit ? speedLines(unit.rows) : [],
        density: required(pressure) / seaLevel,
        ...('missing' in airflow ? {} : { airflow: airflow.likely }),
      };
      const job = logFitJob({ blob: log.blob, read: readingOfLog(log, project.site), given });
      if (wanted.every((j) => j.key !== job.key)) wanted.push(job);
      return unresolved('pending', job.key);
    });
    return { id, name: log.name ?? id, learned };
  });
  return { logs, wanted };
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
