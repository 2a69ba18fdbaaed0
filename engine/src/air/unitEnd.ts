import type { ResolvedProject } from '@kneewall/project';
import { joinsStraight, offsetOf, openingOf, sidesOfUnit } from '../atUnit/ductsAtUnit.ts';
import type { TransitionEnd } from '../physics/cutting/metal/transition.ts';
import { slopedLength } from '../physics/cutting/transition/slopedLength.ts';
import { transitionLoss } from '../physics/flow/index.ts';
import type { Scenario } from '../plan/scenario.ts';

/** What a duct meets at the unit, m: the opening there, how its middle lies off it, and how long the piece between is to be. */
export type UnitEnd = {
  readonly opening: { readonly width: number; readonly height: number };
  readonly offset: readonly [right: number, up: number];
  /** Absent: as long as its slopes want it. */
  readonly length?: number;
};

type Size = { readonly diameter: number } | { readonly width: number; readonly height: number };

/** By duct, what it meets at the unit: of the one duct on a side whose opening is entered. Ducts that share a side have no piece. */
export function unitEnds(
  project: Pick<ResolvedProject, 'routes' | 'candidates'>,
  s: Scenario,
): Record<string, UnitEnd> {
  return Object.fromEntries(
    sidesOfUnit(project).flatMap((at) => {
      const [duct, ...more] = at.ducts;
      const opening = openingOf(at, s);
      if (!duct || more.length > 0 || 'missing' in opening) return [];
      const length = s.maybe(at.joint.length);
      return [[duct.id, { opening, offset: offsetOf(at, s), ...(length === undefined ? {} : { length }) }]];
    }),
  );
}

/** Loss coefficient, on the velocity in a duct of that size and area, of the piece between it and the unit: 0 where they join straight. */
export function unitEndLoss(end: UnitEnd, side: 'supply' | 'return', size: Size, area: number): number {
  if (joinsStraight(end.opening, size, end.offset)) return 0;
  const duct: TransitionEnd =
    'diameter' in size
      ? { kind: 'round', diameter: size.diameter }
      : { kind: 'rectangle', width: size.width, height: size.height };
  const opening: TransitionEnd = { kind: 'rectangle', ...end.opening };
  const back = side === 'return';
  const length = end.length ?? slopedLength({ start: opening, end: duct, offset: end.offset }, back);
  const [from, to] = back ? [duct, opening] : [opening, duct];
  const piece = transitionLoss({ from, to, length, offset: end.offset });
  return piece.loss * (area / piece.area) ** 2;
}
