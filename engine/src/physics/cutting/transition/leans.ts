import type { Transition, TransitionEnd } from '../metal/transition.ts';
import type { TransitionSide } from './sidesFlat.ts';

/** Degrees by which a side leans from the duct's own direction, outward above 0: wider towards the end. */
export type SideLean = { readonly side: TransitionSide; readonly outward: number };

const halves = (end: TransitionEnd): readonly [number, number] =>
  end.kind === 'round' ? [end.diameter / 2, end.diameter / 2] : [end.width / 2, end.height / 2];

/** How each side of a transition leans. m in, degrees out. */
export function leans({
  start,
  end,
  length,
  offset,
}: Pick<Transition, 'start' | 'end' | 'length' | 'offset'>): SideLean[] {
  const [a, b] = [halves(start), halves(end)];
  const lean = (out: number): number => (Math.atan2(out, length) * 180) / Math.PI;
  const wider = (k: 0 | 1, way: 1 | -1): number => lean(b[k] - a[k] + way * offset[k]);
  return [
    { side: 'top', outward: wider(1, 1) },
    { side: 'left', outward: wider(0, -1) },
    { side: 'bottom', outward: wider(1, -1) },
    { side: 'right', outward: wider(0, 1) },
  ];
}
