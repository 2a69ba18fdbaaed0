import { inOrder, type ResolvedProject } from '@kneewall/project';
import type { Scenario } from '../../plan/scenario.ts';
import { insideLength } from '../inside/insideWay.ts';
import type { Ground, Wall } from '../result.ts';

type Lineset = ResolvedProject['routes']['lineset'];
type Input = Lineset['walls'][string];

/** A wall as it was entered, with the ground before it, in plain numbers. */
export const wallOf = (id: string, w: Input, lineset: Lineset, s: Scenario): Wall => ({
  id,
  name: w.name ?? id,
  width: s.of(w.width),
  height: s.of(w.height),
  out: { x: s.of(w.outX), z: s.of(w.outZ) },
  inside: insideLength(lineset, id, s),
  things: inOrder(w.obstacles).map(([, t]) => ({
    kind: s.choice(t.kind),
    x: s.of(t.x),
    z: s.of(t.z),
    width: s.of(t.width),
    height: s.of(t.height),
  })),
  ground: groundOf(w.ground, s),
});

/** What of it is not entered is not there; a thing without all its measures cannot be laid out. */
function groundOf({ depth, things, line, lineLeast, neighbour, fence, mirror }: Input['ground'], s: Scenario): Ground {
  const at = { x: s.maybe(neighbour.x), out: s.maybe(neighbour.out), z: s.maybe(neighbour.z) };
  const over = { out: s.maybe(fence.out), top: s.maybe(fence.top) };
  return {
    depth: s.maybe(depth) ?? 0,
    things: inOrder(things).flatMap(([, t]) => {
      const [x, out, width, deep] = [t.x, t.out, t.width, t.depth].map((q) => s.maybe(q));
      if (x === undefined || out === undefined || width === undefined || deep === undefined) return [];
      return [{ kind: s.choice(t.kind), x, out, width, depth: deep }];
    }),
    ...optional('line', s.maybe(line)),
    ...optional('lineLeast', s.maybe(lineLeast)),
    ...optional('mirror', s.maybe(mirror)),
    ...(at.x !== undefined && at.out !== undefined && at.z !== undefined
      ? { neighbour: { x: at.x, out: at.out, z: at.z } }
      : {}),
    ...(over.out !== undefined && over.top !== undefined ? { fence: { out: over.out, top: over.top } } : {}),
  };
}

const optional = <K extends string>(key: K, value: number | undefined): { [P in K]?: number } =>
  value === undefined ? {} : ({ [key]: value } as { [P in K]?: number });
