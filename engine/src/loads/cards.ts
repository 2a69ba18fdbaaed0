import type { Cards } from '../plan/lines.ts';
import { forAttic, tool } from '../plan/tools.ts';

/** With what each task is done, and when it counts as done. Common practice, no source; the maker’s manual and the code go first. */
export const cards = {
  'seal-attic-floor': {
    tools: [...forAttic, 'Gun for sealant', 'Foam and high-temperature sealant', tool.snips, tool.brush],
    doneWhen: [
      'With a smoke pencil or a wet hand: no draught at any wire hole, wall top, the hatch',
      'Metal and high-temperature sealant round the flue, foam nowhere near it',
      'Insulation back in its place at full depth',
    ],
    // Sealant before it is covered or touched; the tube gives its own time.
    cures: 12 * 3600,
  },
} as const satisfies Cards;
