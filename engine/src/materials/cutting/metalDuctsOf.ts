import { inOrder, type ResolvedProject } from '@kneewall/project';
import { type Scenario, scenario } from '../../plan/scenario.ts';
import { facesOf, leavingOf } from './leavingOf.ts';
import { cutCaps } from './made/madeOf.ts';
import type { CutDuct } from './result.ts';
import { type Ducts, fittedSections, type Section, sizeOf } from './sectionsOf.ts';
import { type Leaving, placeTakeOffs } from './takeOffs.ts';

/** Every duct of rectangular metal that is not fitted yet, with holes for what leaves it. Without its sizes it is left out: the air trade asks. */
export function ductsOf(project: Pick<ResolvedProject, 'routes' | 'items'>): CutDuct[] {
  const { ducts } = project.routes;
  const s = scenario();
  const there = fittedSections(project);
  return inOrder(ducts.sections).flatMap(([id, x]): CutDuct[] => {
    const [shape, length] = [sizeOf(x, s), s.maybe(x.length)];
    if (!('choice' in x.kind) || x.kind.choice !== 'rectangular' || there.has(id)) return [];
    if (!shape || 'diameter' in shape || length === undefined || length <= 0) return [];
    const size = { ...shape, length };
    return [{ id, name: x.name ?? id, ...size, ...holesIn(id, x, size, ducts, s), caps: cutCaps(x) }];
  });
}

function holesIn(
  id: string,
  x: Section,
  size: { width: number; height: number; length: number },
  ducts: Ducts,
  s: Scenario,
) {
  const leaving = leavingOf(id, x, ducts, s);
  const onward = onwardOf(leaving, ducts);
  const faces = facesOf(id, ducts, s);
  const atUnit = 'choice' in x.side && x.side.choice === 'supply' && x.from === undefined;
  if (cutCaps(x).end) return placeTakeOffs([...leaving, ...faces], size, atUnit);
  // Its far end is open: what goes on there needs no hole, and where nothing does the first register sits in it.
  const rest = leaving.filter((l) => l !== onward && (l.side ?? l.drawn?.side) !== 'end');
  const endTaken = rest.length < leaving.length;
  return placeTakeOffs([...rest, ...(endTaken ? faces : faces.slice(1))], size, atUnit);
}

/** The duct that goes straight on: drawn with a reducer or straight through a tee, or the only one that is not round. */
function onwardOf(leaving: readonly Leaving[], { sections }: Ducts): Leaving | undefined {
  const free = leaving.filter((l) => l.side === undefined && l.drawn === undefined);
  const straight = free.find((l) =>
    inOrder(sections[l.id]?.fittings ?? {}).some(
      ([, { kind }]) => 'choice' in kind && (kind.choice === 'reducer' || kind.choice === 'tee-straight'),
    ),
  );
  const angular = free.filter((l) => 'width' in l.shape);
  return straight ?? (angular.length === 1 ? angular[0] : undefined);
}
