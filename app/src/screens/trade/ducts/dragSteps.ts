import type { Spot } from '@kneewall/documents';

/** px of a drag that make one stocked size: about what a finger can hold still within. */
export const pxPerStep = 16;

/** Whole steps that a drag makes along a grip's direction of length 1; what goes sideways counts for nothing. */
export const dragSteps = (moved: Spot, out: Spot): number => {
  const steps = Math.round((moved[0] * out[0] + moved[1] * out[1]) / pxPerStep);
  return steps === 0 ? 0 : steps;
};

/** A place in a list, kept within it. */
export const within = (at: number, length: number): number => Math.max(0, Math.min(length - 1, at));

/** Where a key leads in a list; undefined for a key that means nothing here. */
export function keyStep(key: string, at: number, length: number): number | undefined {
  const target: Readonly<Record<string, number>> = {
    ArrowRight: at + 1,
    ArrowUp: at + 1,
    ArrowLeft: at - 1,
    ArrowDown: at - 1,
    Home: 0,
    End: length - 1,
  };
  const to = target[key];
  return to === undefined ? undefined : within(to, length);
}
