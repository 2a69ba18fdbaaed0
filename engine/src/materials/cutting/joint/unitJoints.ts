import type { ResolvedProject } from '@kneewall/project';
import { joinsStraight, offsetOf, openingOf, type SideOfUnit, sidesOfUnit } from '../../../atUnit/ductsAtUnit.ts';
import { slopedLength } from '../../../physics/cutting/transition/slopedLength.ts';
import { type Scenario, scenario } from '../../../plan/scenario.ts';
import { boardThickness } from '../boxesOf.ts';
import { type Section, sizeOf } from '../sectionsOf.ts';
import type { CutTransition, UnitJoint } from './result.ts';
import { sharedBoxes } from './sharedBoxes.ts';
import { unitIsFitted } from './unitIsFitted.ts';

type Project = Pick<ResolvedProject, 'routes' | 'items' | 'candidates'>;

/**
 * What goes between each opening of the chosen unit and the ducts that join it there: nothing where one is alike and in line,
 * a piece where it is not, a box for several, `unknown` where an opening is not entered. No joint where no unit is chosen or
 * it stands fitted, or where a duct has no size yet. Never throws.
 */
export function unitJoints(project: Project): UnitJoint[] {
  if (unitIsFitted(project)) return [];
  const s = scenario();
  const shared = sharedBoxes(project);
  return sidesOfUnit(project).flatMap((at): UnitJoint[] => {
    const [duct] = at.ducts;
    const shape = duct && sizeOf(duct.section, s);
    if (!duct || !shape) return [];
    const base = { side: at.side, section: duct.id, name: at.ducts.map((d) => d.name).join('”, “') };
    const opening = openingOf(at, s);
    if ('missing' in opening) return [{ ...base, state: 'unknown', missing: opening.missing }];
    if (at.ducts.length > 1)
      return shared.flatMap((box) =>
        box.at.side === at.side
          ? [{ ...base, state: 'shared', opening, length: box.length, ducts: at.ducts.length, of: madeOf(at, s) }]
          : [],
      );
    const offset = offsetOf(at, s);
    if (joinsStraight(opening, shape, offset)) return [{ ...base, state: 'straight', opening }];
    const piece = pieceOf(at, duct.section, shape, { opening, offset }, project, s);
    return [{ ...base, state: 'piece', opening, piece }];
  });
}

/** What a box for several ducts is made of. */
const madeOf = ({ joint }: SideOfUnit, s: Scenario) => (s.choice(joint.made) === 'metal' ? 'metal' : 'board');

type Between = {
  readonly opening: { readonly width: number; readonly height: number };
  readonly offset: readonly [number, number];
};

function pieceOf(
  { side, joint }: SideOfUnit,
  section: Section,
  shape: NonNullable<ReturnType<typeof sizeOf>>,
  { opening, offset }: Between,
  { routes }: Project,
  s: Scenario,
): CutTransition {
  const end = 'diameter' in shape ? ({ kind: 'round', ...shape } as const) : ({ kind: 'rectangle', ...shape } as const);
  const ends = { start: { kind: 'rectangle', ...opening } as const, end, offset };
  const board =
    end.kind === 'rectangle' &&
    s.choice(joint.made) === 'same' &&
    'choice' in section.kind &&
    section.kind.choice === 'board';
  const wanted = slopedLength(ends, side === 'return');
  const entered = s.maybe(joint.length);
  return {
    id: `transition ${side}`,
    ...ends,
    length: entered ?? wanted,
    lengthWanted: wanted,
    lengthFrom: entered === undefined ? 'slopes' : 'entered',
    of: board ? 'board' : 'metal',
    thickness: board ? boardThickness(section, routes.ducts, s) : s.of(routes.ducts.cutting.metal.thickness),
  };
}
