import { inOrder } from '@kneewall/project';
import type { Scenario } from '../../plan/scenario.ts';
import { drawnFrom } from './drawnFrom.ts';
import { chosen, type Ducts, type Section, sizeOf } from './sectionsOf.ts';
import type { Leaving } from './takeOffs.ts';

/** Every duct that joins this one, with what is entered or drawn of its place. */
export const leavingOf = (id: string, box: Section, ducts: Ducts, s: Scenario): Leaving[] =>
  inOrder(ducts.sections).flatMap(([own, x]) =>
    x.from === id && own !== id ? (leavingAs(own, x, box.points, s) ?? []) : [],
  );

/** A duct as it leaves a box that is drawn through `points`, if it is; nothing where it has no size. */
export function leavingAs(
  id: string,
  x: Section,
  points: Section['points'] | undefined,
  s: Scenario,
): Leaving | undefined {
  const shape = sizeOf(x, s);
  if (!shape) return undefined;
  const [side, along, across] = [chosen(x.takeOff.side), s.maybe(x.takeOff.along), s.maybe(x.takeOff.across)];
  const drawn = points && drawnFrom(points, x.points);
  return {
    id,
    name: x.name ?? id,
    shape,
    ...(side === undefined ? {} : { side }),
    ...(along === undefined ? {} : { along }),
    ...(across === undefined ? {} : { across }),
    ...(drawn ? { drawn } : {}),
  };
}

/** Registers that sit in it: over a ceiling, in its bottom. */
export function facesOf(id: string, ducts: Ducts, s: Scenario): Leaving[] {
  return inOrder(ducts.terminals).flatMap(([own, t]) => {
    const [width, height] = [s.maybe(t.width), s.maybe(t.height)];
    if (t.section !== id || width === undefined || height === undefined) return [];
    return [{ id: own, name: t.name ?? own, shape: { width, height }, drawn: { side: 'bottom' as const, along: 0 } }];
  });
}
