import { asked, type Problem } from '../document/problem.ts';
import type { LogTable, LogValues } from './logTable.ts';

type Moments = { readonly mean: number; readonly deviation: number; readonly count: number };

function momentsOf(x: LogValues | undefined): Moments {
  let count = 0;
  let mean = 0;
  let squares = 0;
  for (const v of x ?? []) {
    if (Number.isNaN(v)) continue;
    count++;
    const off = v - mean;
    mean += off / count;
    squares += off * (v - mean);
  }
  return { mean, deviation: Math.sqrt(squares / Math.max(1, count - 1)), count };
}

/** What looks wrong in a log as a whole: columns that seem swapped, units that cannot be. Asked, never changed. */
export function suspicions({ columns, rows, faults }: LogTable): Problem[] {
  const found: Problem[] = [];
  const outdoor = momentsOf(columns.outdoor);
  const indoor = momentsOf(columns.indoor);
  const unit = momentsOf(columns.unitPower);
  const house = momentsOf(columns.housePower);
  if (outdoor.count > 100 && indoor.count > 100 && indoor.deviation > 1.5 * outdoor.deviation)
    found.push(
      asked(
        'conflict',
        ['indoor'],
        'The indoor temperature moves more than the outdoor one: look whether the two columns are swapped.',
      ),
    );
  if (unit.count > 100 && house.count > 100 && house.mean < 0.95 * unit.mean)
    found.push(
      asked(
        'conflict',
        ['housePower'],
        'The whole house draws less than the unit in it: look whether the two columns are swapped, or one is in other units.',
      ),
    );
  if ((faults.impossible?.count ?? 0) > 0.2 * rows)
    found.push(
      asked(
        'wrong-unit',
        [],
        `Every fifth row or more has a value that cannot be, the first “${faults.impossible?.what}”: look at the units.`,
      ),
    );
  for (const id of ['supply', 'return'] as const)
    if (columns[id] && indoor.count > 100 && Math.abs(momentsOf(columns[id]).mean - indoor.mean) > 45)
      found.push(asked('wrong-unit', [id], 'This air is far from the indoor one on average: look at its unit.'));
  return found;
}
