import type { Cards } from '../plan/lines.ts';
import { forAttic, tool } from '../plan/tools.ts';

/** With what each task is done, and when it counts as done. Common practice, no source; the maker’s manual and the code go first. */
export const cards = {
  rope: {
    tools: [tool.lamp, tool.boards, tool.ladder, tool.rope, tool.tape, tool.marker],
    doneWhen: ['Length of the rope, bends and all, entered in the plan', 'Every wall and floor it passes is marked'],
  },
  hole: {
    tools: [tool.drill, tool.holeSaw, tool.mask, tool.ladder, 'Detector for wires and pipes', 'Sleeve and cap'],
    doneWhen: [
      'A marble laid in the sleeve rolls outward',
      'Couplings pass through with room',
      'Capped and weathered, no daylight round it',
    ],
    noisy: true,
    needs: ['power'],
  },
  stand: {
    tools: [tool.level, tool.drill, tool.spanners, tool.straps, tool.gloves, 'Anchors as the maker says'],
    doneWhen: [
      'Level both ways, all feet bolted, a strong pull moves nothing',
      'Clear all round as the unit’s sheet says',
    ],
    noisy: true,
    needs: ['power'],
  },
  lay: {
    tools: [...forAttic, 'Pipe bending spring', 'Clips with soft lining', tool.knife],
    doneWhen: [
      'No kink or flat spot along the whole way, caps still on',
      'Clipped, insulation whole to both ends, spare in one wide flat loop',
    ],
  },
  join: {
    tools: [
      tool.gloves,
      'Goggles',
      tool.spanners,
      'Torque spanner',
      'Nitrogen, regulator and gauges, the licensed person’s',
      'Leak soap',
    ],
    doneWhen: [
      'Test pressure unchanged over the maker’s time, written down with the temperature',
      'No bubble at any joint',
      'Valves opened in the manual’s order, caps back on and tight',
    ],
  },
  seal: {
    tools: [tool.ladder, tool.knife, 'Gun for sealant'],
    doneWhen: [
      'No daylight and no draught round the sleeve, inside and out',
      'A hose from above leaves the inside dry once it has set',
      'Cover on, open below',
    ],
    // Sealant and foam before rain or touch; the tube gives its own time.
    cures: 12 * 3600,
  },
} as const satisfies Cards;
