import { hourMeans, type LogTable } from '@kneewall/project';
import { householdOf } from './household.ts';
import { inverterOf } from './inverter.ts';
import type { LogBeside } from './result.ts';

/** What the columns of the whole house and of the battery teach; undefined where a log has neither. Pure. */
export function besideUnit(table: LogTable): LogBeside | undefined {
  const { housePower, battery, unitPower, outdoor, sunPower, sun } = table.columns;
  if (!housePower && !battery) return undefined;
  const hours = hourMeans({
    ...table,
    columns: Object.fromEntries(
      Object.entries({ housePower, battery, unitPower, outdoor, sunPower, sun }).filter(([, x]) => x !== undefined),
    ),
  });
  const house = householdOf(hours);
  const cell = inverterOf(hours);
  return {
    ...(house.household ? { household: house.household } : {}),
    ...(house.byWeather ? { byWeather: house.byWeather } : {}),
    ...(cell.inverter ? { inverter: cell.inverter } : {}),
    untold: [
      ...(house.why ? [{ column: 'housePower' as const, why: house.why }] : []),
      ...(cell.why ? [{ column: 'battery' as const, why: cell.why }] : []),
    ],
  };
}
