import type { Entered } from '../schema/entered.ts';
import type { Project } from '../schema/project.ts';
import { asked, type Problem } from './problem.ts';

/** °C within which two rows of a sheet are at one temperature. */
const same = 0.05;

/** Rows of a candidate in which the lowest speed gives more than a higher one does at the same temperatures. */
export function rowOrder(project: Project): Problem[] {
  return Object.entries(project.candidates ?? {}).flatMap(([unit, { rows = {} }]) =>
    Object.entries(rows).flatMap(([id, least]) => {
      const capacity = likely(least.capacity);
      if (least.speed !== 'least' || capacity === undefined) return [];
      const most = Object.values(rows).flatMap((row) => {
        const faster = row.speed !== 'least' && (row.mode ?? 'heating') === (least.mode ?? 'heating');
        const there = near(row.outdoor, least.outdoor) && near(row.indoor, least.indoor);
        return faster && there ? (likely(row.capacity) ?? []) : [];
      });
      if (!most.some((w) => w < capacity)) return [];
      return [
        asked(
          'implausible',
          ['candidates', unit, 'rows', id, 'capacity'],
          'The lowest speed cannot give more than a higher one at the same temperatures: look at both rows and their speeds.',
          { found: capacity, allowed: { max: Math.min(...most) } },
        ),
      ];
    }),
  );
}

const likely = (entered: Entered | undefined): number | undefined =>
  entered === undefined ? undefined : typeof entered.value === 'number' ? entered.value : entered.value.likely;

/** Both at one temperature, or both left empty. */
function near(a: Entered | undefined, b: Entered | undefined): boolean {
  const [x, y] = [likely(a), likely(b)];
  return x === undefined || y === undefined ? x === y : Math.abs(x - y) <= same;
}
