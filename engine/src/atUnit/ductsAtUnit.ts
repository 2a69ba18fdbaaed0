import { type Chosen, type Given, inOrder, type Missing, type ResolvedProject } from '@kneewall/project';
import type { Scenario } from '../plan/scenario.ts';
import { chosenUnit } from './chosenUnit.ts';

type Project = Pick<ResolvedProject, 'routes' | 'candidates'>;
type Ducts = ResolvedProject['routes']['ducts'];
type Section = Ducts['sections'][string];

/** All that joins one side of the chosen unit, as entered: the unit's opening there, how the duct lies before it, the ducts. */
export type SideOfUnit = {
  readonly side: 'supply' | 'return';
  readonly opening: { readonly width: Given | Missing; readonly height: Given | Missing };
  readonly joint: Ducts['handler']['supplyJoint'];
  readonly ducts: readonly { readonly id: string; readonly name: string; readonly section: Section }[];
};

/** Both sides of the unit the plan is made for; none where no unit is chosen. */
export function sidesOfUnit({ routes, candidates }: Project): SideOfUnit[] {
  const chosen = chosenUnit({ candidates });
  if (!chosen) return [];
  const { sections, handler } = routes.ducts;
  return (['supply', 'return'] as const).map((side) => ({
    side,
    opening: chosen.unit.openings[side],
    joint: side === 'supply' ? handler.supplyJoint : handler.returnJoint,
    ducts: inOrder(sections).flatMap(([id, section]) =>
      section.from === undefined && chosenOf(section.side) === side ? [{ id, name: section.name ?? id, section }] : [],
    ),
  }));
}

const chosenOf = <T extends string>(field: Chosen<T> | Missing): T | undefined =>
  'choice' in field ? field.choice : undefined;

/** The opening in m, or the first of its fields that is not entered. */
export function openingOf({ opening: { width, height } }: SideOfUnit, s: Scenario) {
  const [w, h] = [s.maybe(width), s.maybe(height)];
  if (w === undefined || h === undefined) return { missing: w === undefined ? width.path : height.path } as const;
  return { width: w, height: h } as const;
}

/** m to the right and up by which the duct's middle lies off the opening's, seen from the unit. */
export const offsetOf = ({ joint }: SideOfUnit, s: Scenario): readonly [right: number, up: number] => [
  s.of(joint.right),
  s.of(joint.up),
];

/** m by which two openings may differ and still go together: a board's or a flange's give. Common practice. */
const same = 0.001;
type Size = { readonly width: number; readonly height: number };

/** Whether a duct goes on the opening as it is: as large and in line. */
export function joinsStraight(
  opening: Size,
  duct: Size | { readonly diameter: number },
  offset: readonly [number, number],
): boolean {
  const near = (a: number, b: number): boolean => Math.abs(a - b) <= same;
  if (!('width' in duct)) return false;
  return near(duct.width, opening.width) && near(duct.height, opening.height) && offset.every((x) => near(x, 0));
}
