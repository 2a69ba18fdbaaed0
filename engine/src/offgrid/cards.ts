import type { Cards } from '../plan/lines.ts';
import { tool } from '../plan/tools.ts';

/** With what each task is done, and when it counts as done. Common practice, no source; the maker’s manual and the code go first. */
export const cards = {
  settings: {
    tools: ['The manuals of inverter and battery', tool.phone],
    doneWhen: [
      'Each setting photographed or written down, with the day',
      'Charging shown off below freezing in the settings, not only promised',
    ],
    needs: ['power'],
  },
  generator: {
    tools: [tool.phone, 'Fuel for the dark week', 'Carbon monoxide alarm'],
    doneWhen: [
      'Ran half an hour with the unit on it, voltage and hertz written down',
      'Fuel for the dark week measured, alarm inside silent',
    ],
    noisy: true,
  },
} as const satisfies Cards;
