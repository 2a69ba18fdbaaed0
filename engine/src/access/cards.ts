import type { Cards } from '../plan/lines.ts';
import { forAttic, tool } from '../plan/tools.ts';

/** With what each task is done, and when it counts as done. Common practice, no source; the maker’s manual and the code go first. */
export const cards = {
  frame: {
    tools: [tool.lamp, tool.boards, tool.tape, tool.knife, 'Cardboard, laths and strong tape'],
    doneWhen: [
      'The frame stood in the unit’s place without being bent',
      'Every turn it needed is written down, in order',
    ],
  },
  platform: {
    tools: [...forAttic, tool.tape, tool.level, tool.saw, tool.drill, 'Screws as the plan says'],
    doneWhen: [
      'Two people stand on it and nothing moves or creaks',
      'Level to a finger’s breadth over its length, every panel ends on a joist and is screwed down',
      'No joist cut, notched or drilled',
    ],
    noisy: true,
  },
  up: {
    tools: [
      ...forAttic,
      tool.straps,
      tool.rope,
      tool.sack,
      'Tackle or lifting gear as the plan says',
      'Helmet for whoever is below',
    ],
    doneWhen: [
      'Unit on its platform, upright, strapped, all four corners borne',
      'Opening shut or guarded above and below',
      'Gear taken down and counted',
    ],
  },
  'outdoor-up': {
    tools: [
      tool.straps,
      tool.rope,
      tool.sack,
      tool.gloves,
      tool.spanners,
      'Tackle or ramp as the plan says',
      'Helmet for whoever is below',
    ],
    doneWhen: ['Outdoor unit bolted or strapped where it stays, upright', 'Nothing hanging, ramp and gear cleared'],
  },
} as const satisfies Cards;
