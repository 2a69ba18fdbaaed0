import { choice, group, quantity } from './field.ts';

const end = (label: string, help: string) => choice({ open: 'Open', closed: 'Closed' }, { label, help, neededBy: [] });
const bought = { bought: 'Bought', cut: 'Cut from sheet metal' } as const;

/** The two ends of a duct. */
export const ductEnds = group(
  {
    start: end('Near end', 'Towards the air handler. Left empty it is open.'),
    end: end(
      'Far end',
      'Left empty a box of board is closed, unless a duct of its own size goes on or a register sits in it; metal is open.',
    ),
    caps: choice(bought, {
      label: 'Caps of metal',
      help: 'Where an end of a metal duct is closed. Those of board are always cut with their box.',
      default: 'bought',
    }),
  },
  { label: 'Ends of a duct' },
);

/** How a reducer is made, where it is not bought. */
export const cutReducer = group(
  {
    made: choice(bought, { label: 'It is', default: 'bought' }),
    length: quantity('length', {
      label: 'Its length',
      help: 'From end to end, where it is cut. Left empty it is as long as its slopes want it.',
      neededBy: [],
      plausible: { min: 0.05, max: 1 },
      possible: { above: 0 },
      usually: 'measured',
    }),
    lies: choice(
      { middle: 'Middle on middle', bottom: 'Flat along the bottom', top: 'Flat along the top' },
      { label: 'The smaller duct lies', default: 'middle' },
    ),
  },
  { label: 'A reducer cut from sheet metal' },
);
