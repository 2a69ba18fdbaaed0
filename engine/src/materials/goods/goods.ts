import { inch } from '../../physics/exact.ts';
import { panelSheet } from '../panels/sheet.ts';
import type { Good } from './good.ts';

const foot = 0.3048;
const feet = (...lengths: readonly number[]): number[] => lengths.map((l) => l * foot);
const none = { share: 0 };
const ownPack = { as: 'piece', packs: [1], waste: none, names: [] } as const;

/** What holds for a trade's things where nothing else is said of them. */
export const usual: Readonly<Record<string, Good>> = {
  air: { ...ownPack, shop: 'heating', by: 'cut', scope: 'ducts' },
  equipment: { ...ownPack, shop: 'heating', by: 'lift', scope: 'unit' },
  condensate: { ...ownPack, shop: 'merchant', by: 'connect', scope: 'drain' },
  lineset: { ...ownPack, shop: 'heating', by: 'connect', scope: 'lineset' },
  circuit: { ...ownPack, shop: 'electrical', by: 'connect', scope: 'electrical' },
  access: { ...ownPack, shop: 'merchant', by: 'lift', scope: 'access' },
  other: { ...ownPack, shop: 'merchant', by: 'close', scope: 'access' },
};

type Special = Partial<Good>;

// Packs and waste: common practice, no source: `materials.packs`, `materials.waste`. Things of which the size decides have no
// names here: a price is theirs when a person says so.
const cable: Special = {
  as: 'reel',
  packs: feet(25, 50, 100, 250),
  waste: { share: 0.1, least: 3 },
};
const pipe: Special = { as: 'length', packs: [10 * foot], waste: { share: 0.1 }, names: ['drain pipe'] };
const panel: Special = { as: 'sheet', packs: [panelSheet.width * panelSheet.length], waste: none };
const sheet = { as: 'sheet', packs: [48 * 120 * inch ** 2], waste: none } as const;

/** What is special of a thing, by the word of its line. */
export const special: Readonly<Record<string, Special>> = {
  'air/duct:flexible': {
    as: 'bag',
    packs: [25 * foot],
    // What ends and slack take is in the need.
    waste: none,
    names: ['flexible duct'],
    itself: true,
  },
  'air/duct:round': {
    as: 'length',
    packs: [5 * foot],
    waste: { share: 0.1 },
    names: ['round metal duct'],
    itself: true,
  },
  'air/duct:rectangular': { as: 'measure', packs: [], waste: { share: 0.1 }, itself: true },
  'air/duct:board': { ...sheet, names: ['duct board'], itself: true },
  'air/box-board': { ...sheet, names: ['duct board'] },
  'air/elbow-round': { names: ['round elbow', 'round elbows'] },
  'air/boots': { by: 'close', names: ['boot'] },
  'air/face': { by: 'close', names: ['register', 'grille'], itself: true },
  'air/transfer': { as: 'measure', packs: [], by: 'close', names: ['transfer grille'] },
  // Bands from a box of 50; wrap 4 ft wide and 75 ft long.
  'air/bands': { as: 'box', packs: [50], names: ['clamp bands'] },
  'air/wrap': { as: 'roll', packs: [300 * foot * foot], waste: { share: 0.1 }, names: ['duct wrap'] },
  'air/hangers': { names: ['saddle hanger'] },
  'air/metal-hangers': { names: ['strap hanger'] },
  'air/mastic': { as: 'tub', waste: { share: 0.25 }, names: ['mastic'] },
  'air/tape': { as: 'roll', packs: [180 * foot], waste: { share: 0.15 }, names: ['foil tape'] },
  'air/filter': { by: 'start', names: ['filter'] },
  'air/test-ports': { by: 'close' },
  'equipment/unit': { shop: 'dealer', names: ['heat pump'], itself: true },
  'equipment/thermostat': { shop: 'dealer', by: 'connect', names: ['thermostat'] },
  'equipment/isolators': { same: 'under the air handler' },
  'access/mounts': { same: 'under the air handler' },
  'equipment/outdoor-feet': { same: 'under the outdoor unit' },
  'lineset/feet': { same: 'under the outdoor unit', scope: 'unit', by: 'lift' },
  'condensate/pipe': pipe,
  'condensate/second-pipe': pipe,
  'condensate/foam': { as: 'length', packs: [6 * foot], waste: none, joints: 'anywhere', names: ['pipe foam'] },
  'condensate/pan': { by: 'lift', names: ['drain pan', 'pan'] },
  'condensate/blocks': { by: 'lift' },
  'condensate/risers': { by: 'lift' },
  'condensate/float': { shop: 'heating', names: ['float switch'] },
  'condensate/switch': { shop: 'heating', names: ['float switch'] },
  'condensate/pump': { shop: 'heating', names: ['condensate pump'] },
  'lineset/set': { shop: 'dealer', names: ['line set'], itself: true, as: 'length' },
  'lineset/sleeve': { by: 'cut' },
  'lineset/cover': { by: 'close', shop: 'merchant' },
  'lineset/channel': {
    as: 'length',
    by: 'close',
    shop: 'heating',
    waste: none,
    names: ['line cover', 'cover channel'],
  },
  'lineset/channel-turns': { by: 'close' },
  'lineset/stand': { by: 'lift', names: ['stand', 'bracket'] },
  'lineset/backing': { ...panel, shop: 'merchant', by: 'lift', names: ['treated plywood'] },
  'circuit/wire': cable,
  'circuit/between': cable,
  'circuit/conduit': { as: 'length', packs: [10 * foot], waste: { share: 0.1 } },
  'access/timber': { as: 'length', packs: feet(8, 10, 12, 16), waste: none, joints: 'none' },
  'access/panel': { ...panel, names: ['plywood'] },
  'access/deck-screws': { as: 'box', packs: [100], names: ['deck screws'] },
  'access/structural-screws': { as: 'box', packs: [50], names: ['structural screws'] },
  'materials/board': { as: 'sheet', shop: 'heating', scope: 'ducts', by: 'cut', names: ['duct board'] },
  'materials/transition': { shop: 'heating', scope: 'ducts', by: 'cut', names: ['transition of sheet metal'] },
  'materials/splice-sleeve': { shop: 'heating', scope: 'ducts', by: 'cut', names: ['splice sleeve'] },
  'materials/cap': { shop: 'heating', scope: 'ducts', by: 'cut', names: ['end cap'] },
  'materials/made': { shop: 'heating', scope: 'ducts', by: 'cut' },
  'materials/screws': { as: 'box', packs: [100], scope: 'ducts', by: 'cut', names: ['wood screws'] },
  'materials/metal-screws': { as: 'box', packs: [100], scope: 'ducts', by: 'cut', names: ['sheet-metal screws'] },
  'materials/boot-sealant': { scope: 'ducts', names: ['sealant'] },
  'materials/cable-straps': { as: 'box', packs: [50], scope: 'electrical', shop: 'electrical', by: 'connect' },
};
