import type { Cards } from '../plan/lines.ts';
import { forAttic, tool } from '../plan/tools.ts';

/** With what each task is done, and when it counts as done. Common practice, no source; the maker’s manual and the code go first. */
export const cards = {
  hang: {
    tools: [
      ...forAttic,
      tool.tape,
      tool.knife,
      tool.snips,
      tool.drill,
      'Tool that draws clamp bands tight',
      'Saddles and straps',
    ],
    doneWhen: [
      'Inner liner pulled tight on every run: no sag deeper than half an inch for each foot between saddles',
      'A saddle at least every 4 ft, no bend tighter than one diameter, nothing crushed',
      'Both ends over their collars with a band drawn tight, every open end capped',
    ],
  },
  'take-out': {
    tools: [...forAttic, tool.snips, tool.drill, tool.knife, 'Bags for what comes out, strong ones'],
    doneWhen: ['Old runs out of the attic, their hangers with them', 'Every opening they leave is capped'],
    noisy: true,
  },
  ports: {
    tools: [...forAttic, tool.drill, 'Two plugs for the ports', tool.marker],
    doneWhen: [
      'Two holes with plugs in, marked “return” and “supply”',
      'No chips left in the box, nothing of coil, pan or wires touched',
    ],
    noisy: true,
  },
  seal: {
    tools: [...forAttic, tool.brush, 'Mastic brush', 'Mesh tape for gaps wider than 6 mm'],
    doneWhen: [
      'Mastic as thick as a coin and an inch past the joint all round, no daylight and no bare gap',
      'Screw heads and seams of the cabinet covered too',
      'Not cold or wet while it cures; the tub’s own time noted on the duct',
    ],
    // A day: most tubs say so; yours may say other.
    cures: 24 * 3600,
  },
  dampers: {
    tools: [...forAttic, tool.snips, tool.drill, tool.marker],
    doneWhen: [
      'Every blade turns freely from stop to stop and locks',
      'Handle outside the insulation, its line shows how the blade stands',
      'Left locked open',
    ],
  },
  balance: {
    tools: [...forAttic, tool.gauge, 'Flow hood or anemometer with a tape', tool.marker, tool.tape],
    doneWhen: [
      'Every register within a tenth of its planned air, or the difference written down',
      'Static pressure within the blower’s table, written beside its speed',
      'All dampers locked and their places marked; none shut',
    ],
  },
  'door-ways': {
    tools: [tool.tape, tool.saw, tool.drill, tool.mask, 'Sawhorses, two', tool.marker],
    doneWhen: [
      'Gap or grille measures at least what the plan names, carpet counted',
      'Cut edges sealed, door swings and latches',
      'With the door shut and the blower on, it no longer moves by itself',
    ],
    noisy: true,
  },
} as const satisfies Cards;
