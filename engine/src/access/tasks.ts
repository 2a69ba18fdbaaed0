import { hotAttic } from '../plan/cautions.ts';
import type { Task } from '../plan/lines.ts';
import { minutes } from '../plan/minutes.ts';
import { cards } from './cards.ts';
import { hoistFor } from './hoistFor.ts';
import type { AccessResult } from './result.ts';

const heavy = 'A trolley carries it, people steady it: nobody lifts alone what is above the limit of one.';
const under = 'Nobody under the load, ever.';

const task = (id: keyof typeof cards, rest: Omit<Task, 'id' | 'trade'>): Task => ({
  id: `access/${id}`,
  trade: 'access',
  ...rest,
  ...cards[id],
});

/** From a frame of cardboard to the unit on its platform. */
export function tasks(result: AccessResult): readonly Task[] {
  if (!result.ways.ok || !result.chosen.ok) return [];
  return [
    task('frame', {
      what: 'Build a frame of the unit’s size from cardboard and laths, and take it the whole way to its place',
      holdPoint: 'order',
      duration: minutes(30, 60, 120),
      people: 2,
      place: 'attic',
      parts: 'any',
      after: [],
      safeStops: ['Any time'],
      cautions: [hotAttic],
    }),
    task('platform', {
      what: 'Fix the platform and the floor along the way to it',
      holdPoint: 'lift',
      duration: minutes(60, 150, 300),
      people: 2,
      place: 'attic',
      // At least two panels: one under the unit, one along the way.
      parts: 2,
      after: ['access/frame'],
      safeStops: ['After each panel: fixed, nothing overhanging'],
      cautions: [hotAttic, 'A structural engineer first where joists are short of strength. No notches in joists.'],
    }),
    task('up', {
      what: hoistFor(result)
        ? 'Hang the tackle, hoist a sack of half the weight, then the unit; lay it on the platform'
        : 'Bring the unit up as the plan says, and lay it on the platform',
      holdPoint: 'lift',
      duration: minutes(45, 90, 180),
      people: 3,
      place: 'attic',
      after: ['access/platform', 'equipment/receive'],
      safeStops: ['Unit on the ground, opening guarded', 'Unit on the platform, strapped, opening guarded'],
      cautions: [hotAttic, under, heavy, 'The opening is a hole in the floor: guard it from above and below.'],
    }),
    ...(result.outdoorUp === 'ramp' || result.outdoorUp === 'rope'
      ? [
          task('outdoor-up', {
            what:
              result.outdoorUp === 'ramp'
                ? 'Fix the ramp and its anchor, draw a sack of half the weight up, then the outdoor unit; strap it down'
                : 'Hang the tackle beside the wall, hoist a sack of half the weight, then the outdoor unit; strap it down',
            holdPoint: 'lift',
            duration: minutes(45, 90, 180),
            people: 3,
            place: 'outside',
            after: ['equipment/receive'],
            safeStops: ['Unit on the ground', 'Unit on its bracket or stand, bolted'],
            cautions: [under, heavy, 'Keep it upright; a unit that lay on its side stands a day before it runs.'],
          }),
        ]
      : []),
  ];
}
