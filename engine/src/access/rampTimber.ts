import type { ResolvedProject } from '@kneewall/project';
import { inch } from '../physics/exact.ts';
import { unresolved } from '../plan/outcome.ts';
import type { Scenario } from '../plan/scenario.ts';
import type { Member } from './result.ts';

/** m: two planks 2x10 side by side, and from batten to batten under them. Source: `access.ramp-timber` (common practice). */
const planks = 2;
const planksWide = planks * 9.25 * inch;
const battenEvery = 0.6;

/**
 * Timber of the ramp up which the outdoor unit is drawn, m: planks from the ground to the height of its base at the entered
 * slope, in one piece, and battens that hold them together from below. Nothing without a ramp; whether the planks bear the
 * unit is judged by nobody here. Source: `access.ramp-timber`.
 */
export function rampTimber({ access: { outdoor }, lineset }: ResolvedProject['routes'], s: Scenario): Member[] {
  if (s.choice(outdoor.up) !== 'ramp') return [];
  const [height, slope] = [s.of(lineset.place.z), s.of(outdoor.slope)];
  if (!(height > 0)) return unresolved('missing', lineset.place.z.path);
  if (!(slope > 0)) return unresolved('out-of-range', outdoor.slope.path);
  const length = height / Math.sin((slope * Math.PI) / 180);
  return [
    { size: '2x10', name: 'Planks of the ramp, side by side', length, count: planks },
    {
      size: '2x4',
      name: 'Battens under the ramp',
      length: planksWide,
      count: Math.ceil(length / battenEvery - 1e-9) + 1,
    },
  ];
}
