import { printQuantity, type QuantityKind, type System } from '@kneewall/project';
import type { ListLine, Scope, Shop, Since, SoldAs, Unused } from './result.ts';

/** Words of the shopping list, the same on the screen, on paper and in a table. */
export const shopTitle: Readonly<Record<Shop, string>> = {
  merchant: 'Building merchant',
  heating: 'Heating and ventilation supplier',
  electrical: 'Electrical supplier',
  dealer: 'Dealer or maker of the unit',
};

export const scopeTitle: Readonly<Record<Scope, string>> = {
  unit: 'The unit and what it stands on',
  ducts: 'Ducts, registers and sealing',
  electrical: 'Electrical parts',
  drain: 'Drain',
  lineset: 'Line set',
  access: 'Lifting, platform and house',
  tools: 'Tools',
};

export const sinceTitle: Readonly<Record<Since, string>> = {
  'as-ordered': 'as ordered',
  more: 'more than ordered',
  less: 'less than ordered',
  new: 'not on the order',
  open: 'not ordered yet',
};

export const unusedWords: Readonly<Record<Unused['because'], string>> = {
  amount: 'its amount is not understood: write it with its unit, 3 or 25 ft',
  'no-amount': 'it says no amount',
  unit: 'what it is sold by is not understood: each, a 25 ft bag, a box of 100',
  goods: 'the delivery is to bring it, and nothing on the list has that name',
  line: 'the line it is for is not on the list',
  thickness: 'no thickness is entered, and the plan takes board of several',
  several: 'several prices have the name of one thing: say which is for which line',
};

const names: Readonly<Record<Exclude<SoldAs, 'measure'>, readonly [string, string]>> = {
  piece: ['piece', 'pieces'],
  box: ['box', 'boxes'],
  roll: ['roll', 'rolls'],
  tub: ['tub', 'tubs'],
  bag: ['bag', 'bags'],
  length: ['length', 'lengths'],
  sheet: ['sheet', 'sheets'],
  reel: ['reel', 'reels'],
};

/** An amount as one says it in a shop: three digits, lengths in feet or metres, parts of a tub to a tenth. */
export function amountWords(value: number, kind: QuantityKind, units: System): string {
  if (kind === 'count') return String(Math.round(value * 10) / 10);
  const unit = kind === 'length' ? { unit: units === 'us' ? 'ft' : 'm' } : {};
  return printQuantity(value, kind, units, { significant: 3, ...unit });
}

/** So many pieces of a line as they are asked for: `3 bags of 25 ft`, `4`, and what is sold by measure by its amount. */
export function piecesWords(line: ListLine, pieces: number, amount: number, units: System): string {
  if (amount <= 0) return 'none';
  if (line.as === 'measure' || line.piece <= 0) return amountWords(amount, line.kind, units);
  const [one, many] = names[line.as];
  const name = pieces === 1 ? one : many;
  if (line.kind === 'count' && line.piece === 1) return line.as === 'piece' ? String(pieces) : `${pieces} ${name}`;
  return `${pieces} ${name} of ${amountWords(line.piece, line.kind, units)}`;
}

/** What is easily forgotten and why, by its id. Common practice, no source. */
export const forgottenWords: Readonly<Record<string, { readonly what: string; readonly why: string }>> = {
  'strap-tool': {
    what: 'Tensioning tool for the straps of flexible duct',
    why: 'Pulled by hand they let the inner core slip off.',
  },
  'jacket-tape': {
    what: 'Tape for the outer jackets of flexible duct, listed for them',
    why: 'An open jacket end takes in damp air and drips.',
  },
  'hole-saw': {
    what: 'Hole saw or core bit of the sleeve’s size, with arbor and a long pilot bit',
    why: 'The wall is open the moment it is known to be missing.',
  },
  'coupling-spanners': {
    what: 'Two spanners that fit the couplings, and a torque wrench',
    why: 'Couplings of some sets may be tightened once only, to the maker’s torque.',
  },
  'vacuum-pump': {
    what: 'Vacuum pump, gauge and hoses for the unit’s ports, or the licensed person who brings them',
    why: 'Many places leave this work to licensed people: book them before the unit is on the wall.',
  },
  'spare-pipe': {
    what: 'A spare elbow and a spare length of drain pipe',
    why: 'A cemented joint that is wrong is cut out, not turned.',
  },
  'wire-connectors': {
    what: 'Wire connectors, ground screws and marking tape in the wires’ sizes',
    why: 'Three cents that stop the electrician.',
  },
  'voltage-tester': {
    what: 'Voltage tester, and something live to prove it on first',
    why: 'A dead tester makes every wire look dead.',
  },
  'fire-stop': {
    what: 'Sealant or collars for holes through floors and walls, fire-stopping where code asks for it',
    why: 'Every hole you make lets air, sound and fire through.',
  },
  'dust-masks': {
    what: 'Fine-dust masks, goggles and sleeves for everybody',
    why: 'Old insulation may hold what must not be breathed; ask before you disturb it.',
  },
  'kneeling-boards': {
    what: 'Boards to lie across the joists',
    why: 'A knee goes through the ceiling once.',
  },
  batteries: { what: 'Batteries for lamps, thermostat and meters', why: 'They are never in the box.' },
  'filter-rack': {
    what: 'Rack, cabinet or filter grille that holds the filter, with a door that seals, where there is none yet',
    why: 'A filter that is only leaned in lets the dust go round it onto the coil.',
  },
  'boot-insulation': {
    what: 'Insulation for the boots and the collars in the attic',
    why: 'Bare metal in an attic drips in summer and wastes heat in winter.',
  },
  'control-cable': {
    what: 'Control cable from the thermostat to the air handler, of the kind and length the maker names',
    why: 'Some wall controls bring theirs, some do not.',
  },
  'co-alarm': {
    what: 'Carbon monoxide alarm where anything burns in the house, and a cover for smoke alarms while cutting',
    why: 'A new return changes how a stove draws. Take the cover off again.',
  },
  'drop-sheets': { what: 'Drop sheets and a vacuum for the rooms', why: 'Old dust comes down with the first cut.' },
};
