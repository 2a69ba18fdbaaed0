import { hotAttic } from '../plan/cautions.ts';
import type { Task } from '../plan/lines.ts';
import { minutes } from '../plan/minutes.ts';
import { balanceTasks } from './balancing/balanceTasks.ts';
import { cards } from './cards.ts';
import type { CommissioningResult } from './result.ts';

const live =
  'Covers stay on: behind them are live parts and charged capacitors, for a licensed person with the breaker locked off.';
const pressure = 'Refrigerant stands under pressure and burns skin: valves and charge are for whoever is licensed.';

const task = (id: keyof typeof cards, rest: Omit<Task, 'id' | 'trade'>): Task => ({
  id: `commissioning/${id}`,
  trade: 'commissioning',
  ...rest,
  ...cards[id],
});

/** From the last look before power to the look of every season, in order. Nothing before a unit is chosen. */
export const tasks = ({ startUp, visits }: Pick<CommissioningResult, 'startUp' | 'visits'>): readonly Task[] =>
  startUp.unit ? [...toTheFirstDay(startUp.ownPower), ...balanceTasks(Object.values(visits)), ...later] : [];

const toTheFirstDay = (ownPower: boolean): Task[] => [
  task('before-power', {
    what: 'Before power: go round with the list, from the outdoor unit to the last register',
    holdPoint: 'start',
    duration: minutes(20, 40, 90),
    people: 2,
    place: 'attic',
    parts: 'any',
    after: ['air/seal', 'condensate/fill', 'lineset/join', 'circuit/connect', 'equipment/settings'],
    safeStops: ['Any time: breaker locked off'],
    cautions: [live, pressure, hotAttic],
  }),
  task('first-hour', {
    what: ownPower
      ? 'First hour: fan alone, then one mode, on a sunny day with a full battery; stay beside it'
      : 'First hour: fan alone, then one mode; stay beside it',
    holdPoint: 'start',
    duration: minutes(60, 75, 120),
    people: 2,
    place: 'inside',
    after: ['commissioning/before-power', 'circuit/first-power'],
    safeStops: ['Switched off at its control, disconnect open, hatch closed'],
    cautions: [
      live,
      'A smell of burning, sparks, a breaker that trips: off at the disconnect, stay out, have it looked at. Do not switch on again.',
      'Where a stove or flue shares the air: an alarm for carbon monoxide in the room before the blower runs.',
    ],
  }),
  task('first-readings', {
    what: 'First readings: one state, 15 minutes steady, then pressure, power, temperatures, flows; enter them',
    holdPoint: 'start',
    duration: minutes(60, 100, 180),
    people: 2,
    place: 'attic',
    parts: 3,
    after: ['commissioning/first-hour'],
    safeStops: ['After each kind of reading: ports plugged, hatch closed'],
    cautions: [hotAttic, 'Power is read at a meter with its covers on, or by a licensed person.'],
  }),
];

const later: readonly Task[] = [
  task('first-week', {
    what: 'After a week: drain, damp, screws, noise, and what it used',
    holdPoint: 'season',
    duration: minutes(20, 30, 60),
    people: 1,
    place: 'inside',
    parts: 'any',
    after: ['commissioning/first-readings'],
    safeStops: ['Any time: hatch closed'],
    cautions: [live, hotAttic],
  }),
  task('filter', {
    what: 'Every month: look at the filter against a lamp; change it when it is grey',
    holdPoint: 'season',
    duration: minutes(5, 10, 20),
    people: 1,
    place: 'inside',
    parts: 'any',
    after: ['commissioning/first-readings'],
    safeStops: ['Filter in, its door shut'],
    cautions: ['Unit off at its control before the filter comes out: nothing loose near a running fan.'],
  }),
  task('first-frost', {
    what: 'At the first frost: watch a whole defrost, see where its water goes, look at the drain’s end',
    holdPoint: 'season',
    duration: minutes(30, 60, 120),
    people: 1,
    place: 'outside',
    parts: 'any',
    after: ['commissioning/first-readings'],
    safeStops: ['Any time'],
    cautions: [
      'Ice on steps and paths; ice that falls. Never chip ice off the coil. The fan starts by itself: hands out.',
    ],
  }),
  task('each-season', {
    what: 'Every spring and autumn: three readings as at first start, filter, coil, drain, float switch, hangers',
    holdPoint: 'season',
    duration: minutes(45, 75, 150),
    people: 1,
    place: 'attic',
    parts: 2,
    after: ['commissioning/first-readings'],
    safeStops: ['Readings done, ports plugged', 'Filter in, covers on, hatch closed'],
    cautions: [live, hotAttic, 'Power off and locked before the filter’s door opens near the fan.'],
  }),
];
