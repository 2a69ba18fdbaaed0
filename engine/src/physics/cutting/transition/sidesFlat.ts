import type { Spot } from '../fold/pattern.ts';
import type { FlatTransition } from '../metal/transition.ts';

/** Sides in the order in which a transition's triangles go round it, seen from within with its start below. */
export const transitionSides = ['top', 'left', 'bottom', 'right'] as const;
export type TransitionSide = (typeof transitionSides)[number];

/** One plane side as it lies: its first and last corner at the start, and those at the end above them. */
export type SideFlat = {
  readonly name: TransitionSide;
  readonly start: readonly [Spot, Spot];
  readonly end: readonly [Spot, Spot];
};

/** The four sides of a transition between two rectangles, each a plane trapezoid of two triangles; nothing for other ends. */
export function sidesFlat({ triangles }: Pick<FlatTransition, 'triangles'>): SideFlat[] | undefined {
  if (triangles.length !== 2 * transitionSides.length) return undefined;
  const sides = transitionSides.flatMap((name, i): SideFlat[] => {
    const [s0, e0, s1] = triangles[2 * i]?.flat ?? [];
    const e1 = triangles[2 * i + 1]?.flat[2];
    return s0 && e0 && s1 && e1 ? [{ name, start: [s0, s1], end: [e0, e1] }] : [];
  });
  return sides.length === transitionSides.length ? sides : undefined;
}
