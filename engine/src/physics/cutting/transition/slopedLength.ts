import { inch } from '../../exact.ts';
import type { Transition } from '../metal/transition.ts';
import { leans } from './leans.ts';

/** Degrees a side leans where a length is worked out, widening and narrowing: within `cutting.slopes`. */
const aim = { widening: 20, narrowing: 25 } as const;
/** m: the shortest piece that hands can fasten at both ends, and the step of a worked-out length. Common practice. */
const [shortest, step] = [4 * inch, 0.5 * inch];

/** m at which no side of a piece leans more than is aimed at. The air goes from its start to its end, or `back`. Source: `cutting.slopes`. */
export function slopedLength(ends: Pick<Transition, 'start' | 'end' | 'offset'>, back: boolean): number {
  const wants = leans({ ...ends, length: 1 }).map(({ outward }) => {
    const out = Math.tan((outward * Math.PI) / 180);
    const widens = back ? out < 0 : out > 0;
    return Math.abs(out) / Math.tan(((widens ? aim.widening : aim.narrowing) * Math.PI) / 180);
  });
  return Math.ceil(Math.max(shortest, ...wants) / step - 1e-6) * step;
}
