import { inOrder } from '@kneewall/project';
import type { Scenario } from '../../plan/scenario.ts';
import { drawnFrom } from './drawnFrom.ts';
import { chosen, type Ducts, type Section, sizeOf } from './sectionsOf.ts';
import type { Leaving } from './takeOffs.ts';

/** Every duct that joins this one, with what is entered or drawn of its place. */
export function leavingOf(id: string, box: Section, ducts: Ducts, s: Scenario): Leaving[] {
  return inOrder(ducts.sections).flatMap(([own, x]) => {
    const shape = x.from === id && own !== id ? sizeOf(x, s) : undefined;
    if (!shape) return [];
    const [side, along, across] = [chosen(x.takeOff.side), s.maybe(x.takeOff.along), s.maybe(x.takeOff.across)];
    const drawn = drawnFrom(box.points, x.points);
    return [
      {
        id: own,
        name: x.name ?? own,
        shape,
        ...(side === undefined ? {} : { side }),
        ...(along === undefined ? {} : { along }),
        ...(across === undefined ? {} : { across }),
        ...(drawn ? { drawn } : {}),
      },
    ];
  });
}

/** Registers that sit in it: over a ceiling, in its bottom. */
export function facesOf(id: string, ducts: Ducts, s: Scenario): Leaving[] {
  return inOrder(ducts.terminals).flatMap(([own, t]) => {
    const [width, height] = [s.maybe(t.width), s.maybe(t.height)];
    if (t.section !== id || width === undefined || height === undefined) return [];
    return [{ id: own, name: t.name ?? own, shape: { width, height }, drawn: { side: 'bottom' as const, along: 0 } }];
  });
}
