import type { MaterialLine } from '../plan/lines.ts';
import { thickSaid } from '../plan/plywood.ts';
import { hoistFor } from './hoistFor.ts';
import type { AccessResult } from './result.ts';

const count = (id: string, what: string, amount: number): MaterialLine => ({
  id: `access/${id}`,
  trade: 'access',
  what,
  kind: 'count',
  amount,
  soldBy: 1,
  for: 'routes.access',
});

/** What lifting and working up there take, once it is known that the unit is to go through an opening. */
export function materials(result: AccessResult): readonly MaterialLine[] {
  if (!result.ways.ok || !result.chosen.ok) return [];
  return [
    count('frame', 'Cardboard and laths for a frame of the unit’s size, to be taken up first', 1),
    count('gloves', 'Pairs of gloves with grip', 2),
    count('lamp', 'Lamp on a stand, and a head lamp', 2),
    ...(hoistFor(result)
      ? [
          count('sheaves', 'Sheaves and blocks made for lifting, with their loads marked', 2),
          count('slings', 'Lifting slings, with their loads marked', 2),
          count('tag', 'Light line to keep the load from turning', 1),
        ]
      : []),
    // Where its height is not entered yet, planks are counted and not cut.
    ...(result.outdoorUp === 'ramp' && !result.ramp.ok
      ? [count('ramp', 'Planks for a ramp, with battens under them and something to fix both ends', 2)]
      : []),
    ...(result.mounted.ok && result.mounted.value.own > 0
      ? [count('mounts', 'Pads or springs under the unit, chosen for a quarter of its weight each', 4)]
      : []),
    ...timber(result),
    ...panels(result),
    ...deckScrews(result),
    ...(result.platform.ok && result.platform.value.across
      ? [
          {
            ...count(
              'structural-screws',
              'Structural screws for the timbers across the joists, two at each crossing',
              24,
            ),
            soldBy: 50,
          },
        ]
      : []),
    ...(result.heat.ok ? [count('bottles', 'Water bottles that reach into the attic, one for each person', 2)] : []),
  ];
}

/** m from joist to joist, and from screw to screw across a panel. Common practice, no source. */
const [joistEvery, screwEvery] = [0.4064, 0.2];

/** Two screws at each joist that a board of the floor crosses, and a row at each that a panel crosses. Common practice, no source. */
function deckScrews({ members, panels }: AccessResult): MaterialLine[] {
  const rows = (length: number): number => Math.floor(length / joistEvery + 1e-9) + 1;
  const boards = members.ok ? members.value.filter((m) => m.name.startsWith('Floor')) : [];
  const sheets = panels.ok ? panels.value.pieces : [];
  const screws =
    boards.reduce((a, m) => a + m.count * 2 * rows(m.length), 0) +
    sheets.reduce((a, p) => a + p.count * rows(p.length) * (Math.ceil(p.width / screwEvery - 1e-9) + 1), 0);
  return screws > 0
    ? [
        {
          ...count('deck-screws', 'Deck screws of 75 mm (3 in) for the floor, at every joist', screws),
          soldBy: 100,
        },
      ]
    : [];
}

/** Plywood for platform and floor, piece by piece. */
function panels({ panels }: AccessResult): MaterialLine[] {
  if (!panels.ok || panels.value.pieces.length === 0) return [];
  const { thickness, pieces } = panels.value;
  return [
    {
      id: 'access/panel',
      trade: 'access',
      what: `Plywood for floors, ${thickSaid(thickness)}, for the platform and the floor round it`,
      kind: 'area',
      amount: pieces.reduce((a, p) => a + p.count * p.length * p.width, 0),
      panels: panels.value,
      for: 'routes.access.platform.sheet',
    },
  ];
}

/** Timber by its size, each piece of it. Whether joists bear it is no matter of a list: findings and cautions say so. */
function timber({ members, ramp }: AccessResult): MaterialLine[] {
  const heaps = [members.ok ? members.value : [], ramp.ok ? ramp.value : []];
  const all = heaps.flat();
  return (['2x4', '2x6', '2x10'] as const).flatMap((size): MaterialLine[] => {
    const own = all.filter((m) => m.size === size);
    if (own.length === 0) return [];
    const [floor, up] = heaps.map((heap) => heap.some((m) => m.size === size));
    const use = [...(floor ? ['platform and floor'] : []), ...(up ? ['the ramp'] : [])].join(', and for ');
    return [
      {
        id: `access/timber:${size}`,
        trade: 'access',
        what: `Timber ${size}, dry and straight, for ${use}`,
        kind: 'length',
        amount: own.reduce((sum, m) => sum + m.count * m.length, 0),
        pieces: own.map(({ name, length, count }) => ({ name, length, count })),
        for: 'routes.access',
      },
    ];
  });
}
