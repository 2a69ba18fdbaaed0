import { lengthOfWay } from '../drawn/way.ts';
import { printQuantity } from '../quantity/index.ts';
import type { Project } from '../schema/project.ts';
import { asked, type Problem } from './problem.ts';

/** How far a drawn way may be from the entered length, as a share of that length. Bends are rounded and tapes sag. */
const slack = 0.1;

/** Ducts whose drawn way is not the length entered: the entered one counts, and the person is asked which is right. */
export function wayProblems(project: Project): Problem[] {
  const units = project.site?.units ?? 'us';
  return Object.entries(project.routes?.ducts?.sections ?? {}).flatMap(([id, { points, length }]) => {
    if (points === undefined || points.length < 2 || length === undefined) return [];
    const entered = typeof length.value === 'number' ? length.value : length.value.likely;
    const drawn = lengthOfWay(points);
    if (Math.abs(drawn - entered) <= slack * entered) return [];
    const print = (m: number) => printQuantity(m, 'length', units);
    return [
      asked(
        'length-differs',
        ['routes', 'ducts', 'sections', id, 'points'],
        `It is drawn ${print(drawn)} long and entered as ${print(entered)}. The entered length counts; correct the one that is wrong.`,
        { found: drawn, allowed: entered },
      ),
    ];
  });
}
