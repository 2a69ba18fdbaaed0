import type { Cards } from '../plan/lines.ts';
import { tool } from '../plan/tools.ts';

/** With what each check is done, and when it counts as done. Common practice, no source; the maker’s manual and the code go first. */
export const cards = {
  'before-power': {
    tools: [tool.lamp, tool.lock, 'The maker’s manual', 'This list, printed'],
    doneWhen: [
      'Nothing lies in plenums, on the fan or round the outdoor unit; every cover is on',
      'Filter in, its arrow with the air; every register, damper and door open',
      'Trap filled, drain and pan run free, float switch lifts and stops the unit',
      'Caps on both valves, no oil at any joint, valves opened by whoever is licensed to',
      'Old heat works and stays until the new one is proved',
    ],
  },
  'first-hour': {
    tools: ['Two thermometers', tool.phone, tool.lamp],
    doneWhen: [
      'Fan alone first: no rattle, air at every register, nothing rubs',
      'Then the mode of the season: after 15 minutes supply and return air written down',
      'No water but from the drain, no smell, no error on the display',
      'Stopped from the control and started again: both waited for and seen',
    ],
    needs: ['power'],
  },
  'first-readings': {
    tools: [tool.gauge, 'Two thermometers', 'Bag on a hoop, stop watch', 'Power meter of the unit’s circuit'],
    doneWhen: [
      'Static pressure, power, supply and return air read in one state and entered',
      'Every register once, those in doubt three times',
      'Whatever is off has a cause or a next reading',
    ],
    needs: ['power'],
  },
  'first-week': {
    tools: [tool.lamp, tool.level, 'Hygrometer'],
    doneWhen: [
      'Drain still runs, pan dry, no stain below it, no damp jacket',
      'Screws of hangers and stand still tight, nothing hums through the wall',
      'A week’s energy of the unit written down beside the mean outdoor temperature',
    ],
  },
  filter: {
    tools: [tool.lamp, 'New filter, in case'],
    doneWhen: ['Seen against the lamp: light comes through, or it was changed and its day written on its frame'],
  },
  'first-frost': {
    tools: [tool.lamp, tool.phone],
    doneWhen: [
      'One whole defrost watched: steam, then water that finds its way off without icing a path',
      'Ice gone from the coil after it; strips stayed off where they are locked out',
      'Drain and its end free of ice; power of the night written down',
    ],
  },
  'each-season': {
    tools: [tool.gauge, 'Two thermometers', 'Power meter of the unit’s circuit', 'New filter', tool.brush],
    doneWhen: [
      'The three readings of the first start repeated in the same state and entered',
      'Filter changed or washed, coil and outdoor fins seen, nothing grown round the unit',
      'Trap filled, drain and pan rinsed, float switch lifted: the unit stops',
      'Hangers, jackets and collars looked along once with a lamp',
    ],
  },
} as const satisfies Cards;
