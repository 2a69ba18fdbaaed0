import type { Cards } from '../plan/lines.ts';
import { tool } from '../plan/tools.ts';

/** With what each task is done, and when it counts as done. Common practice, no source; the maker’s manual and the code go first. */
export const cards = {
  receive: {
    tools: [tool.knife, tool.phone, 'The order'],
    doneWhen: [
      'Both model numbers equal the order, letter for letter',
      'Every dent photographed with the carrier’s paper before signing',
    ],
  },
  settings: {
    tools: [tool.lamp, tool.lock, tool.tester, 'The maker’s manual'],
    doneWhen: [
      'Every setting of the list written down as it stands',
      'Read back once with power on: fan, defrost, strips, return after a power cut',
    ],
    needs: ['power'],
  },
} as const satisfies Cards;
