import type { ResolvedProject } from '@kneewall/project';
import { chosenUnit } from '../../../atUnit/chosenUnit.ts';
import { inch } from '../../../physics/exact.ts';
import { unresolved } from '../../../plan/outcome.ts';
import { scenario } from '../../../plan/scenario.ts';
import { type Found, telling } from '../../../plan/telling.ts';
import type { FlatBox } from '../result.ts';

const told = telling('materials', 'pieces');
const base = { kind: 'length', consequence: 'money', holdPoint: 'cut', source: 'cutting.headroom' } as const;

/** m left over a box so that a hand can staple and tape its top. Source: `cutting.headroom` (common practice). */
const hand = 0.1;

type Project = Pick<ResolvedProject, 'routes' | 'items' | 'candidates'>;

/**
 * Whether a box at the unit has room below the roof, and does not reach below what the unit stands on: its middle as high as
 * the opening's, taken to be the unit's own, and its offset. Boxes further on are checked against the space entered for them.
 */
export function headroomFindings({ id, name, side, box, flat }: FlatBox, project: Project): Found[] {
  const { sections, handler } = project.routes.ducts;
  if (sections[id]?.from !== undefined || flat.problems.length > 0) return [];
  const s = scenario();
  const up = s.of((side === 'supply' ? handler.supplyJoint : handler.returnJoint).up);
  const unit = chosenUnit(project)?.unit.handler.height;
  const high = unit ? s.maybe(unit) : undefined;
  const outside = flat.outside.height;
  // Of a unit without its height a box stands on the same boards.
  const middle = high === undefined ? outside / 2 : high / 2 + up;
  const most = s.maybe(handler.headroom);
  const given = { middle, outside };
  const top = middle + outside / 2;
  return [
    told(
      {
        ...base,
        id: `headroom:${id}`,
        limit: most === undefined ? {} : { max: most },
        marginWanted: hand,
        facts: { name, ...(most === undefined || top <= most ? {} : lower(box, most - middle)) },
      },
      (rec) => {
        if (most === undefined) return unresolved('missing', handler.headroom.path);
        rec.step('top', 'middle + outside / 2', given, top, 'm', base.source);
        return top;
      },
    ),
    ...(high === undefined
      ? []
      : [
          told(
            { ...base, id: `stands:${id}`, limit: { min: 0 }, facts: { name, down: outside / 2 - middle } },
            (rec) => {
              const foot = middle - outside / 2;
              rec.step('foot', 'middle - outside / 2', given, foot, 'm', base.source);
              return foot;
            },
          ),
        ]),
  ];
}

/** Inside sizes of a box with the same area that keeps below the roof; nothing where that leaves less than a hand's breadth. */
function lower({ width, height, thickness }: FlatBox['box'], above: number): Record<string, number> {
  const inside = Math.floor((2 * (above - thickness)) / inch) * inch;
  return inside < hand ? {} : { lowTo: inside, wideTo: Math.ceil((width * height) / inside / inch) * inch };
}
