import type { LogTable } from '@kneewall/project';
import type { WeatherYear } from '../../climate/weather/weatherYear.ts';
import { learnFromLog } from '../../commissioning/logs/learnFromLog.ts';
import type { LogFitInputs } from '../../commissioning/logs/logJob.ts';
import type { LogAnswers } from '../../commissioning/logs/result.ts';
import { expectedUnit } from './expectedUnit.ts';
import { planInLog } from './planInLog.ts';

/** What a log teaches, held against the plan's own house in the same weather and its unit at the same heat. `year` is the plan's. */
export function fitLog(
  table: LogTable,
  { given, plan }: LogFitInputs,
  year: WeatherYear | undefined,
  tell: (done: number, total: number) => void,
): LogAnswers {
  const { unit, ...rest } = given;
  return learnFromLog(
    table,
    {
      ...rest,
      ...(unit ? { expected: expectedUnit(unit) } : {}),
      ...(plan && year ? { planned: (log) => planInLog(log, plan, year) } : {}),
    },
    tell,
  );
}
