import { choice, group, quantity } from './field.ts';

const size = (
  label: string,
  { usual, most, help, least = 0.0001 }: { usual: number; most: number; help?: string; least?: number },
) =>
  quantity('length', {
    label,
    ...(help ? { help } : {}),
    default: usual,
    plausible: { min: least, max: most },
    possible: { above: 0 },
    usually: 'nameplate',
  });
const taken = (label: string, help: string) =>
  quantity('length', {
    label,
    help,
    default: 0,
    plausible: { min: 0, max: 0.006 },
    possible: { min: 0, max: 0.05 },
    usually: 'assumed',
  });
const optional = (label: string, help: string) =>
  quantity('length', {
    label,
    help,
    neededBy: [],
    plausible: { min: 0.02, max: 20 },
    possible: { above: 0 },
    usually: 'measured',
  });

const board = group(
  {
    thickness: quantity('length', {
      label: 'Thickness',
      help: 'One of 1, 1 1/2 and 2 in. Left empty: the thinnest that gives the insulation entered for the duct (R-4.3, R-6.5, R-8.7).',
      neededBy: [],
      plausible: { min: 0.0254, max: 0.0508 },
      possible: { above: 0 },
      usually: 'nameplate',
    }),
    width: size('Width of a sheet', { usual: 1.2192, least: 0.3, most: 3.7 }),
    length: size('Length of a sheet', { usual: 3.048, least: 0.3, most: 6.1 }),
    turns: choice(
      { yes: 'Either way', no: 'Only one way' },
      {
        label: 'Pieces may lie on it',
        help: 'Only one way: what goes round a box lies along the sheet’s length. Some facings or factory edges ask for that.',
        default: 'yes',
      },
    ),
    kerf: taken('A cut takes', 'A knife takes nothing; a saw its width.'),
    keep: size('Keep what is left from', { usual: 0.3, least: 0.05, most: 1.5, help: 'Both sides of it.' }),
    form: choice(
      {
        fewest: 'As few pieces as the sheet allows',
        one: 'One piece, folded round',
        l: 'Two pieces, each an L',
        u: 'Two pieces, a U and a lid',
        four: 'Four pieces',
      },
      { label: 'A box is made of', default: 'fewest' },
    ),
  },
  { label: 'Duct board' },
);

const metal = group(
  {
    thickness: size('Thickness', { usual: 0.00055, least: 0.0003, most: 0.002, help: '26 gauge: 0.55 mm.' }),
    width: size('Width of a sheet', { usual: 1.2192, least: 0.3, most: 2 }),
    length: size('Length of a sheet', { usual: 2.4384, least: 0.3, most: 6.1 }),
    lap: size('Lap of the seam', { usual: 0.0254, least: 0.01, most: 0.06 }),
    kerf: taken('A cut takes', 'Shears take nothing; a saw or a disc its width.'),
  },
  { label: 'Sheet metal' },
);

const straight = group(
  {
    pipe: size('Length of round metal duct', { usual: 1.524, least: 0.5, most: 6.1 }),
    coil: size('Length of flexible duct in a bag', {
      usual: 7.62,
      least: 2,
      most: 31,
      help: 'A price with its own length stands before it.',
    }),
    sleeve: size('A splice takes', {
      usual: 0.1016,
      least: 0.02,
      most: 0.4,
      help: 'Of both ends together, over its metal sleeve.',
    }),
    splices: choice(
      {
        'fewest-splices': 'Only where a run is longer than a bag',
        'fewest-coils': 'Also where it saves a bag',
      },
      {
        label: 'Splice flexible duct',
        help: 'Every splice is a place to leak, and one more joint to seal.',
        default: 'fewest-splices',
      },
    ),
    saw: quantity('length', {
      label: 'A saw cut takes',
      help: 'Of pipe, conduit, channel and timber: 1/8 in or 3 mm.',
      default: 0.003175,
      plausible: { min: 0, max: 0.006 },
      possible: { min: 0, max: 0.05 },
      usually: 'assumed',
    }),
    splicesMost: quantity('count', {
      label: 'Splices in one run, at most',
      help: 'Its maker may allow none. A run that needs more is told of: buy a longer bag, or go part of the way in metal.',
      default: 1,
      plausible: { min: 0, max: 4 },
      possible: { min: 0 },
      usually: 'assumed',
    }),
  },
  { label: 'Straight lengths and bags' },
);

/** What pieces are cut from. */
export const ductCutting = group(
  { board, metal, straight },
  { label: 'What ducts are cut from', help: 'Sizes as your shop sells them. Left empty: usual ones.' },
);

/** Where a duct leaves the box it joins. */
export const takeOff = group(
  {
    side: choice(
      { left: 'Left', right: 'Right', top: 'Top', bottom: 'Bottom', end: 'Far end' },
      {
        label: 'Leaves the box at its',
        help: 'Seen from the air handler, looking along the box. Left empty: as the plan is drawn.',
        neededBy: [],
      },
    ),
    along: optional(
      'Its middle, along the box',
      'Inside, from where the box begins. Left empty: worked out. At the far end: from the bottom.',
    ),
    across: optional(
      'Its middle, across the side',
      'Inside, from the bottom of a side, from the left of top, bottom or far end. Left empty: the middle.',
    ),
  },
  { label: 'Hole in the box it joins' },
);
