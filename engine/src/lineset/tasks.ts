import { atticWork } from '../plan/cautions.ts';
import type { Task } from '../plan/lines.ts';
import { minutes } from '../plan/minutes.ts';
import { cards } from './cards.ts';
import type { LinesetResult } from './result.ts';

const refrigerant =
  'Refrigerant stands under pressure, freezes skin and may burn: couplings, valves, vacuum and charge are licensed work in most places.';
const task = (id: keyof typeof cards, rest: Omit<Task, 'id' | 'trade'>): Task => ({
  id: `lineset/${id}`,
  trade: 'lineset',
  ...rest,
  ...cards[id],
});

const rope = task('rope', {
  what: 'Lay a rope along the whole way, bends and all, from the air handler to the place of the outdoor unit; measure it',
  holdPoint: 'order',
  duration: minutes(15, 30, 60),
  people: 2,
  place: 'attic',
  parts: 'any',
  after: [],
  safeStops: ['Any time'],
  cautions: ['Ladder: tied or held, three points of contact.', ...atticWork],
});

const seal = task('seal', {
  what: 'Seal the sleeve: inside against air and vapour, the middle with foam that stays soft, outside against rain, with a cover open below',
  holdPoint: 'close',
  duration: minutes(20, 30, 60),
  people: 1,
  after: ['lineset/join'],
  safeStops: ['Any time once the outside is weathered'],
  cautions: ['Ladder: tied or held, three points of contact.'],
});

/** From the hole in the wall to the leak test, and the hole closed for good. */
export function tasks({ needed, once }: LinesetResult): readonly Task[] {
  if (!needed.ok) return [];
  return [
    rope,
    task('hole', {
      what: 'Drill the hole for the sleeve, sloping outward, large enough for the couplings; sleeve in, closed for the night',
      holdPoint: 'cut',
      duration: minutes(30, 60, 120),
      people: 1,
      place: 'outside',
      after: ['lineset/rope'],
      safeStops: ['Sleeve in, weathered, closed against animals'],
      cautions: ['Before drilling: wires, pipes and framing behind? Old boards and paint may hold asbestos or lead.'],
    }),
    task('stand', {
      what: 'Fix bracket or stand to framing or masonry as its maker says; level; lift the outdoor unit onto it and bolt it down',
      holdPoint: 'lift',
      duration: minutes(60, 120, 240),
      people: 2,
      place: 'outside',
      // Bracket or stand fixed; unit lifted and bolted.
      parts: 2,
      after: ['lineset/hole', 'equipment/receive', 'access/outdoor-up'],
      safeStops: ['Bracket or stand fixed, unit on the ground, covered', 'Unit bolted down, tags on'],
      cautions: [
        'Nobody under a hanging load. Wind and ice pull far harder than its weight: anchors by the maker or an engineer.',
      ],
    }),
    task('lay', {
      what: 'Uncoil the set along the floor, lead it through with wide bends, caps on until the last moment; spare in one wide flat loop',
      holdPoint: 'connect',
      duration: minutes(45, 90, 180),
      people: 2,
      place: 'attic',
      after: ['lineset/stand'],
      safeStops: ['Caps on both ends, line clipped, sleeve closed'],
      cautions: [
        ...atticWork,
        'A kink ends the set: bend once, slowly, with both hands or a spring. Never bend it back.',
        refrigerant,
      ],
    }),
    task('join', {
      what: 'Join, test for leaks before any valve is opened, then open in the order of the maker’s manual',
      holdPoint: 'connect',
      duration: minutes(45, 90, 180),
      people: 1,
      place: 'outside',
      after: ['lineset/lay'],
      safeStops: ['Joined and holding its test pressure, valves shut'],
      cautions: [
        ...(once
          ? [
              'Couplings for one use: once turned they stay. Both units fixed for good and the line clipped before the first turn.',
            ]
          : []),
        refrigerant,
        'Two spanners, one holds. Goggles and gloves.',
      ],
    }),
    seal,
  ];
}
