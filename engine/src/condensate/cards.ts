import type { Cards } from '../plan/lines.ts';
import { forAttic, tool } from '../plan/tools.ts';

/** With what each task is done, and when it counts as done. Common practice, no source; the maker’s manual and the code go first. */
export const cards = {
  level: {
    tools: [...forAttic, tool.level, tool.tape, 'Shims and risers that do not rot'],
    doneWhen: [
      'Bubble level across, level or falling towards the drain along, as the maker says',
      'Pan under it, risers borne, unit strapped',
    ],
  },
  pipe: {
    tools: [...forAttic, tool.tape, tool.level, tool.saw, tool.marker, tool.bonding],
    doneWhen: [
      'Dry-fitted first: falls all the way, at least a quarter inch a foot or what the code asks',
      'Trap as deep as the plan, clean-outs reachable, vent after the trap',
      'Every joint glued with a bead of cement all round, ends open to where it drains',
    ],
    // Solvent cement before it holds water; its tin gives the time for the day’s cold.
    cures: 2 * 3600,
  },
  fill: {
    tools: [tool.lamp, tool.jug, tool.bucket, tool.lock],
    doneWhen: [
      'A litre poured in left within a minute or two, no drop beside the pipe',
      'With the drain stopped, the switch acted or water came out where it is seen',
      'Drain open again, trap full',
    ],
    needs: ['water'],
  },
  pump: {
    tools: [...forAttic, tool.level, tool.knife, tool.lock, tool.jug],
    doneWhen: [
      'Pump runs and stops by itself when water is poured in',
      'With its plug out, the high-water switch stops the unit',
    ],
    needs: ['power'],
  },
  'second-line': {
    tools: [...forAttic, tool.tape, tool.level, tool.saw, tool.bonding, tool.jug],
    doneWhen: ['A litre came out where somebody sees it', 'Falls all the way, no trap, joins no other pipe'],
    cures: 2 * 3600,
  },
} as const satisfies Cards;
