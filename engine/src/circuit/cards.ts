import type { Cards } from '../plan/lines.ts';
import { forAttic, tool } from '../plan/tools.ts';

/** With what each task is done, and when it counts as done. Common practice, no source; the maker’s manual and the code go first. */
export const cards = {
  permit: {
    tools: [tool.phone, 'The plan set, printed'],
    doneWhen: [
      'Permit number, or the authority’s “none needed”, written down with the name and day',
      'An electrician has said yes to a day',
    ],
  },
  pull: {
    tools: [
      ...forAttic,
      tool.drill,
      'Fish tape',
      'Staples and clamps for the cable',
      tool.knife,
      tool.marker,
      tool.lock,
    ],
    doneWhen: [
      'Each cable in one piece from box to box, labelled at both ends',
      'Held as often as the code asks, no staple through a sheath',
      'Ends capped and coiled, nothing connected',
    ],
    noisy: true,
  },
  count: {
    tools: [tool.lamp, tool.meter, tool.phone, 'The maker’s diagram'],
    doneWhen: [
      'Number of conductors equals the diagram, each rung through once',
      'Photographs of both ends kept with the plan',
    ],
  },
  insulation: {
    tools: [tool.lock, 'Insulation tester, the licensed person’s'],
    doneWhen: [
      'A reading for every circuit is written down and above what the code asks',
      'Wires discharged and capped again',
    ],
  },
  connect: {
    tools: [tool.lock, tool.tester, tool.torque, tool.marker, 'The maker’s wiring diagram'],
    doneWhen: [
      'Every terminal tightened to its printed torque, a mark across each',
      'Disconnect in sight of the unit, labels on panel and disconnect',
      'Covers on, breaker off and locked',
    ],
  },
  'prove-dead': {
    tools: [tool.lock, tool.tester, 'A live point to try the tester on'],
    doneWhen: ['Tester showed live, dead, live, in that order', 'Lock and tag on, key in the pocket of whoever works'],
  },
  'first-power': {
    tools: [tool.tester, tool.phone, tool.marker],
    doneWhen: [
      'Voltage before and while running written down, within the nameplate’s range',
      'Unit ran and was stopped at its control; nothing smelt, hummed or tripped',
    ],
    needs: ['power'],
  },
} as const satisfies Cards;
