import { hotAttic } from '../plan/cautions.ts';
import type { Task } from '../plan/lines.ts';
import { minutes } from '../plan/minutes.ts';
import { cards } from './cards.ts';
import type { CondensateResult } from './result.ts';

const solvents =
  'Primer and cement give off fumes that burn and make drunk: air from outside, no flame, no pilot light, no sparks.';

const task = (id: keyof typeof cards, rest: Omit<Task, 'id' | 'trade'>): Task => ({
  id: `condensate/${id}`,
  trade: 'condensate',
  ...rest,
  ...cards[id],
});

/** From the unit's level to the first litre poured in. */
export function tasks({ along, pumped }: CondensateResult): readonly Task[] {
  if (!along.ok) return [];
  return [
    task('level', {
      what: 'Set the unit level, or a little low towards its drain as the maker says, on risers as high as the trap needs; pan under it first',
      holdPoint: 'cut',
      duration: minutes(20, 40, 90),
      people: 2,
      place: 'attic',
      after: [],
      safeStops: ['Unit on its blocks, strapped, hatch guarded'],
      cautions: [hotAttic, 'The unit is heavy: fingers out before it comes down.'],
    }),
    task('pipe', {
      what: 'Dry-fit trap, vent, clean-outs and the whole drain with its fall; mark; then glue from the trap down; second line or switch beside it',
      holdPoint: 'connect',
      duration: minutes(60, 120, 240),
      people: 1,
      place: 'attic',
      // Dry-fitted; glued.
      parts: 2,
      after: ['condensate/level'],
      safeStops: ['Dry-fitted and marked', 'After each glued joint: ends capped'],
      cautions: [hotAttic, solvents],
    }),
    task('fill', {
      what: 'Fill the trap, pour a litre into the pan, watch it leave; then stop the drain and see that the second way works',
      holdPoint: 'close',
      duration: minutes(15, 25, 45),
      people: 2,
      place: 'attic',
      parts: 'any',
      after: ['condensate/pipe'],
      safeStops: ['Any time: drain open, pan dry'],
      cautions: ['Power locked off while water is poured near the unit. Keep it away from wires and controls.'],
    }),
    ...(pumped
      ? [
          task('pump', {
            what: 'Set the pump level, lead its tube up and then down, wire its high-water switch as the unit’s maker shows',
            holdPoint: 'close',
            duration: minutes(40, 75, 150),
            people: 1,
            place: 'attic',
            after: ['condensate/pipe'],
            safeStops: ['Pump unplugged, its box empty'],
            cautions: ['Power locked off, unit and pump. Wiring is for whoever the local code lets do it.'],
          }),
        ]
      : []),
    ...(along.value.second === 'pan' || along.value.second === 'overflow'
      ? [
          task('second-line', {
            what: 'Lay the second line with its fall and no trap, on its own to where it is seen; pour a litre through it',
            holdPoint: 'connect',
            duration: minutes(30, 60, 120),
            people: 1,
            place: 'attic',
            after: ['condensate/level'],
            safeStops: ['After each glued joint: ends capped'],
            cautions: [hotAttic, solvents],
          }),
        ]
      : []),
  ];
}
