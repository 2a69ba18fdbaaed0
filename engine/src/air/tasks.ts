import type { Task } from '../plan/lines.ts';
import type { AirResult } from './result.ts';

const minute = 60;
const attic = [
  'Heat kills in attics: start early, short turns, never alone.',
  'Kneel on boards across joists only; the ceiling between does not carry you.',
  'Old loose insulation may hold asbestos, old wiring may be bare: stop and have it looked at.',
];

/** Hanging, sealing and testing the ducts. Each run is its own safe stop. */
export function tasks({ model }: AirResult): readonly Task[] {
  if (!model.ok) return [];
  const runs = model.value.sections.length;
  const each = (low: number, likely: number, high: number) => ({
    low: runs * low * minute,
    likely: runs * likely * minute,
    high: runs * high * minute,
  });
  return [
    {
      id: 'air/hang',
      trade: 'air',
      what: 'Hang the ducts: pull each flexible run tight, a saddle every 4 ft, bends no tighter than one diameter',
      holdPoint: 'connect',
      duration: each(20, 35, 70),
      people: 2,
      after: [],
      safeStops: ['After each run: both ends fixed and capped, hatch guarded'],
      cautions: attic,
    },
    {
      id: 'air/ports',
      trade: 'air',
      what: 'Drill the two test ports: one in the return box before the filter’s far side, one in the supply plenum past the coil; plug them',
      holdPoint: 'cut',
      duration: { low: 10 * minute, likely: 20 * minute, high: 30 * minute },
      people: 1,
      after: ['air/hang'],
      safeStops: ['Any time: ports plugged'],
      cautions: ['Keep the drill away from coil, drain pan and wires; power locked off.'],
    },
    {
      id: 'air/seal',
      trade: 'air',
      what: 'Seal every collar, seam and the cabinet with mastic, and let it cure',
      holdPoint: 'close',
      duration: each(10, 20, 40),
      people: 2,
      after: ['air/hang', 'air/ports'],
      safeStops: ['After each joint: tub closed, lamp off, hatch guarded'],
      cautions: attic,
    },
  ];
}
