import { atticWork, electric } from '../plan/cautions.ts';
import type { Task } from '../plan/lines.ts';
import { minutes } from '../plan/minutes.ts';
import { cards } from './cards.ts';
import { battery } from './cautions.ts';
import type { CircuitResult } from './result.ts';

const locked = 'Power locked off at the breaker, no bare end in reach';

/** From the permit to the first power. Pulling cable is the builder’s; connecting and testing are for a licensed person. */
export function tasks(result: CircuitResult): readonly Task[] {
  return result.unit.ok ? [...untilClosed(result.runs.length), ...untilPower(result.supply)] : [];
}

const task = (id: keyof typeof cards, rest: Omit<Task, 'id' | 'trade'>): Task => ({
  id: `circuit/${id}`,
  trade: 'circuit',
  ...rest,
  ...cards[id],
});

const untilClosed = (circuits: number): Task[] => [
  task('permit', {
    what: 'Ask the authority who may pull, connect and test these circuits, and what it wants to see open; find the electrician now',
    holdPoint: 'decide',
    duration: minutes(30, 60, 180),
    people: 1,
    place: 'inside',
    parts: 'any',
    after: [],
    safeStops: ['Any time'],
    cautions: ['In many places only a licensed electrician may connect, and insurance asks for it.'],
  }),
  task('pull', {
    what: 'Pull the wires from the panel to each unit, and the cable between the units; ends capped, nothing connected',
    holdPoint: 'connect',
    duration: minutes(60 * circuits, 120 * circuits, 300 * circuits),
    people: 2,
    place: 'attic',
    // Of each circuit first the way, then the wires.
    parts: 2 * Math.max(1, circuits),
    after: ['circuit/permit'],
    safeStops: [
      'After each way: conduit or clips fixed, a cord drawn in, ends closed',
      'After each cable: both ends capped and coiled, hatch guarded',
    ],
    cautions: [electric, 'Before drilling: what is behind? Old wiring may be bare and live.', ...atticWork],
  }),
  task('count', {
    what: 'Count the conductors between the units against the maker’s diagram, ring each one through, photograph both ends',
    holdPoint: 'close',
    duration: minutes(10, 20, 40),
    people: 2,
    place: 'attic',
    parts: 'any',
    after: ['circuit/pull'],
    safeStops: ['Any time: ends capped'],
    cautions: ['Ring through with nothing connected at either end.', ...atticWork],
  }),
];

const untilPower = (supply: CircuitResult['supply']): Task[] => [
  task('insulation', {
    what: 'Have the insulation of each circuit measured, wires disconnected at both ends',
    holdPoint: 'connect',
    duration: minutes(15, 30, 60),
    people: 1,
    place: 'inside',
    parts: 'any',
    after: ['circuit/pull'],
    safeStops: ['Any time: tester off, wires discharged, ends capped'],
    cautions: [
      'The tester puts 500 V on the wires and destroys electronics: never with a unit connected. A licensed person does it.',
    ],
  }),
  task('connect', {
    what: 'Hang the disconnect in sight of the unit; a licensed electrician connects panel, disconnect and units, tightens to the printed torque, labels',
    holdPoint: 'connect',
    duration: minutes(60, 120, 240),
    people: 1,
    place: 'attic',
    // Panel and disconnect; the units.
    parts: 2,
    after: ['circuit/insulation', 'circuit/count'],
    safeStops: [`After panel and disconnect: covers on. ${locked}`, locked],
    cautions: [electric, ...(supply === 'own' ? [battery] : []), ...atticWork],
  }),
  task('prove-dead', {
    what: 'Before any cover is opened again: off, locked, tagged; wait as long as the unit’s label says; tester on a live point, on the unit, on the live point again',
    holdPoint: 'start',
    duration: minutes(5, 10, 20),
    people: 1,
    place: 'attic',
    after: ['circuit/connect'],
    safeStops: [locked],
    cautions: [
      electric,
      'Capacitors in an inverter-driven unit hold hundreds of volts for minutes after it is off.',
      ...atticWork,
    ],
  }),
  task('first-power', {
    what: 'First power, by whoever is licensed to: voltage at the disconnect before the unit is switched in, then running; write both down',
    holdPoint: 'start',
    duration: minutes(20, 40, 90),
    people: 2,
    place: 'outside',
    after: ['circuit/prove-dead'],
    safeStops: ['Unit off at its control, disconnect open and locked'],
    cautions: [electric],
  }),
];
