import { type LoadPart, type Outcome, partShares, partTitle, type Spread, type TradeResults } from '@kneewall/engine';
import { printQuantity, type QuantityKind, type System } from '@kneewall/project';
import { formatRange } from '@kneewall/project/quantity';
import { type Block, bold, lead, page, small, table } from '../block.ts';
import { orUnknown } from '../orUnknown.ts';
import type { SetInput } from '../setInput.ts';

/** What the house needs on the cold night and on the hot afternoon: whole, by room, and by what carries the heat. */
export function loadsPage({ plan, units }: SetInput): Block[] {
  const { loads } = plan.trades;
  if (!loads) return [];
  return [
    page('Loads in short'),
    lead(
      'Heat on the design night, cooling at the hour at which the house needs most. From low to high by what is not known exactly.',
    ),
    houseTable(loads, units),
    roomTable(loads, units),
    partsTable('What carries the heat out on the cold night', loads.heatingParts, units),
    partsTable('What brings heat in on the hot afternoon', loads.coolingParts, units),
    small('How each number comes about stands under “Workings”, where it is taken from under “Sources”.'),
  ];
}

type Loads = TradeResults['loads'];

function houseTable(loads: Loads, units: System): Block {
  const row = (what: string, outcome: Outcome<Spread>, kind: QuantityKind): string[] => [
    what,
    orUnknown(outcome, (s) => printQuantity(s.likely, kind, units)),
    orUnknown(outcome, (s) => formatRange(s, kind, units)),
  ];
  const cooling = (pick: 'sensible' | 'latent'): Outcome<Spread> =>
    loads.cooling.ok ? { ok: true, value: loads.cooling.value[pick] } : loads.cooling;
  return table(
    [
      { head: 'The whole house', width: '*' },
      { head: 'Likely', width: 90, right: true },
      { head: 'From low to high', width: 150, right: true },
    ],
    [
      row('Heating, the cold night', loads.heating, 'power'),
      row('Cooling, sensible', cooling('sensible'), 'power'),
      row('Cooling, latent', cooling('latent'), 'power'),
    ],
  );
}

function roomTable(loads: Loads, units: System): Block {
  const watts = (outcome: Outcome<Spread>): string =>
    orUnknown(outcome, (s) => printQuantity(s.likely, 'power', units));
  return table(
    [
      { head: 'Room', width: '*' },
      { head: 'Heating', width: 80, right: true },
      { head: 'Cooling', width: 80, right: true },
      { head: 'Most of its heat goes through', width: 150 },
    ],
    Object.values(loads.rooms).map((room) => {
      const most = partShares(room.heatingParts)[0];
      return [bold(room.name), watts(room.heating), watts(room.cooling), most ? partTitle[most.part] : ''];
    }),
    { title: 'Room by room' },
  );
}

const partsTable = (title: string, parts: readonly LoadPart[], units: System): Block =>
  table(
    [
      { head: 'Part', width: '*' },
      { head: 'Heat', width: 90, right: true },
      { head: 'Share', width: 60, right: true },
    ],
    partShares(parts).map(({ part: id, heat, share }) => [
      partTitle[id],
      printQuantity(heat, 'power', units),
      printQuantity(share, 'fraction', units),
    ]),
    { title },
  );
