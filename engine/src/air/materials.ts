import type { QuantityKind } from '@kneewall/project';
import type { MaterialLine } from '../plan/lines.ts';
import { damperLines } from './balance/damperLines.ts';
import { grilleLines } from './doors/doorWork.ts';
import { fittingLines } from './fittingLines.ts';
import { sideOf } from './model.ts';
import type { AirModel, AirResult, DuctSection } from './result.ts';

/** Length bought beyond the run for ends and waste. Common practice. */
const allowance = 1.1;

/** Ducts by kind and size, collars, straps, registers, filter, sealing. */
export function materials({ model, shut, fittings }: AirResult): readonly MaterialLine[] {
  if (!model.ok) return [];
  return [
    ...model.value.sections.map(duct),
    ...joints(model.value),
    ...fittingLines(fittings),
    ...damperLines(model.value),
    ...(shut.ok ? grilleLines(shut.value.ways) : []),
    ...faces(model.value),
  ];
}

const duct = (x: DuctSection): MaterialLine => ({
  id: `air/duct:${x.id}`,
  trade: 'air',
  what: `${kindNames[x.kind]} for “${x.name}”`,
  kind: 'length',
  amount: x.length * allowance,
  for: `routes.ducts.sections.${x.id}`,
});

const kindNames = {
  flexible: 'Insulated flexible duct',
  round: 'Round metal duct',
  rectangular: 'Rectangular metal duct',
  board: 'Duct board',
} as const;

/** m from joint to joint in metal and board, and from hanger to hanger in metal. Common practice. */
const pieceLength = 1.2;
const metalHangers = 2.4;
/** Joints that a tub of mastic (a gallon) covers, and m² of board for a plenum or return box. Common practice. */
const jointsOfTub = 12;
const boxBoard = 1.5;

const isMetal = (x: DuctSection): boolean => x.kind === 'round' || x.kind === 'rectangular';

/** Joints of a run: two ends, and in metal and board one at every piece. */
const jointsOf = (x: DuctSection): number => (x.kind === 'flexible' ? 2 : 1 + Math.ceil(x.length / pieceLength));

/** Collars, boots, boxes, hangers by their spacing, tape and mastic by joint. */
function joints(model: AirModel): MaterialLine[] {
  const flexible = model.sections.filter((x) => x.kind === 'flexible');
  const supplies = model.terminals.filter((t) => sideOf(model, t.section) === 'supply').length;
  const returns = model.terminals.length - supplies;
  const sum = (of: (x: DuctSection) => number): number => model.sections.reduce((a, x) => a + of(x), 0);
  const all = sum(jointsOf) + model.terminals.length;
  const count = (id: string, what: string, amount: number): MaterialLine => line(id, what, 'count', amount, 1);
  const inMetal = sum((x) => (isMetal(x) ? Math.ceil(x.length / metalHangers) : 0));
  return [
    count('collars', 'Collars and inner-core straps, two a flexible run', 2 * flexible.length),
    ...(supplies > 0 ? [count('boots', 'Boots, one for each supply register', supplies)] : []),
    line('box-board', 'Duct board for the supply plenum and the return boxes', 'area', boxBoard * (1 + returns)),
    count(
      'hangers',
      'Saddle hangers, at least 1 1/2 in wide',
      flexible.reduce((a, x) => a + Math.ceil(x.length / x.supports), 0),
    ),
    ...(inMetal > 0 ? [count('metal-hangers', 'Strap hangers for metal duct, one every 8 ft', inMetal)] : []),
    count('mastic', 'Tubs of mastic, a gallon for a dozen joints', Math.max(1, Math.ceil(all / jointsOfTub))),
    line(
      'tape',
      'Listed foil tape, once round each joint',
      'length',
      sum((x) => jointsOf(x) * Math.max(x.surface / x.length, 0.1)) * allowance,
    ),
    count('test-ports', 'Plugs for two pressure test ports', 2),
  ];
}

const line = (id: string, what: string, kind: QuantityKind, amount: number, soldBy?: number): MaterialLine => ({
  id: `air/${id}`,
  trade: 'air',
  what,
  kind,
  amount,
  ...(soldBy === undefined ? {} : { soldBy }),
});

const faces = (model: AirModel): MaterialLine[] => [
  ...model.terminals.map(
    (t): MaterialLine => ({
      id: `air/face:${t.id}`,
      trade: 'air',
      what: t.name,
      kind: 'count',
      amount: 1,
      soldBy: 1,
      for: `routes.ducts.terminals.${t.id}`,
    }),
  ),
  {
    id: 'air/filter',
    trade: 'air',
    what: 'Filters: one to start, one spare',
    kind: 'count',
    amount: 2,
    soldBy: 1,
    for: 'routes.ducts.filter',
  },
];
