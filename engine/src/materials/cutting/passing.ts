import { inOrder, type ResolvedProject } from '@kneewall/project';
import { scenario } from '../../plan/scenario.ts';
import { type Found, telling } from '../../plan/telling.ts';
import type { FlatBox } from './result.ts';

const told = telling('materials', 'pieces');

/** Whether a box made up below passes end first, outside sizes counted, at the tightest of the ways in that are measured. */
export function passing({ id, name, flat, box }: FlatBox, passages: ResolvedProject['routes']['passages']): Found[] {
  if (flat.problems.length > 0) return [];
  const s = scenario();
  const ends = [
    { inside: Math.min(box.width, box.height), side: Math.min(flat.outside.width, flat.outside.height) },
    { inside: Math.max(box.width, box.height), side: Math.max(flat.outside.width, flat.outside.height) },
  ];
  const checks = inOrder(passages).flatMap(([own, p]) => {
    const [a, b] = [s.maybe(p.width), s.maybe(p.height)];
    if (a === undefined || b === undefined) return [];
    const clear = [Math.min(a, b), Math.max(a, b)];
    return ends.map((end, i) => ({ ...end, clear: clear[i] ?? 0, way: p.name ?? own }));
  });
  const [tightest] = checks.sort((a, b) => a.clear - a.side - (b.clear - b.side));
  if (!tightest) return [];
  const { inside, clear, way } = tightest;
  return [
    told(
      {
        id: `passes:${id}`,
        kind: 'length',
        consequence: 'money',
        holdPoint: 'cut',
        source: 'cutting.passing',
        limit: { max: clear },
        facts: { name, way },
      },
      (rec) => {
        const given = { inside, board: box.thickness };
        const outer = inside + 2 * box.thickness;
        rec.step('outer', 'inside + 2 * board', given, outer, 'm', 'cutting.passing');
        return outer;
      },
    ),
  ];
}
