import type { MaterialLine } from '../../plan/lines.ts';

/** m of metal duct from joint to joint, and of cable from strap to strap. Source: `materials.used-up` (common practice). */
const metalPiece = 1.2;
const strapEvery = 1.37;
const screwsEach = 2;
const screwsPerJoint = 3;
const bootsPerCartridge = 6;
const metalFittings = [
  'elbow-round',
  'elbow-round-tight',
  'elbow-rectangular',
  'elbow-rectangular-vaned',
  'tee-branch',
  'reducer',
];

/** What joining and fixing uses up, by joint, hanger and metre of what the trades name. Amounts are needs, not yet boxes. */
export function usedUp(lines: readonly MaterialLine[]): MaterialLine[] {
  const word = (l: MaterialLine) => l.id.split(':')[0] ?? l.id;
  const sum = (words: readonly string[], of: (l: MaterialLine) => number): number =>
    lines.reduce((a, l) => a + (l.amount > 0 && words.includes(word(l)) ? of(l) : 0), 0);
  const amount = (l: MaterialLine) => l.amount;
  const held = sum(['air/hangers', 'air/metal-hangers', 'air/face', 'condensate/hangers', 'lineset/clips'], amount);
  const metal = lines.filter((l) => l.amount > 0 && /^(round|rectangular) /.test(l.like?.id ?? ''));
  const joints = metal.reduce((a, l) => a + 1 + Math.ceil(l.amount / metalPiece), 0);
  const fittings =
    2 *
    sum(
      metalFittings.map((f) => `air/${f}`),
      amount,
    );
  const conduits = new Set(lines.flatMap((l) => (word(l) === 'circuit/conduit' ? [l.id.split(':')[1]] : [])));
  const open = sum(['circuit/wire', 'circuit/between'], (l) =>
    conduits.has(l.id.split(':')[1]) ? 0 : l.amount / strapEvery + 2,
  );
  return [
    count('screws', 'Wood screws, two for each hanger, clip and register', screwsEach * held),
    count(
      'metal-screws',
      'Sheet-metal screws, three for each joint of metal duct',
      metal.length > 0 ? screwsPerJoint * (joints + fittings) : 0,
    ),
    count(
      'boot-sealant',
      'Cartridges of sealant between boots and ceiling',
      sum(['air/boots'], (l) => l.amount / bootsPerCartridge),
    ),
    count('cable-straps', 'Straps for cable that lies open, made for its size', open),
  ].filter((l) => l.amount > 0);
}

const count = (id: string, what: string, amount: number): MaterialLine => ({
  id: `materials/${id}`,
  trade: 'materials',
  what,
  kind: 'count',
  amount: Math.ceil(amount * (1 - 1e-9) * 100) / 100,
});
