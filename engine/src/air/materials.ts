import { flexibleNeeded } from '../physics/cutting/index.ts';
import type { MaterialLine } from '../plan/lines.ts';
import { sizeSaid } from '../plan/sizeSaid.ts';
import { damperLines } from './balance/damperLines.ts';
import { grilleLines } from './doors/doorWork.ts';
import type { AirModel, DuctSection } from './ductwork.ts';
import { fittingLines } from './fittingLines.ts';
import { jointLines, newTerminals } from './jointLines.ts';
import { slackOf } from './mend.ts';
import type { AirResult } from './result.ts';
import { shapeOf } from './sizing/reshape.ts';
import { shapeId } from './sizing/stock.ts';
import type { There } from './there.ts';

/** Ducts by kind and size, collars, straps, registers, filter, sealing; of what is there already only what seals it. */
export function materials({ model, shut, fittings, there }: AirResult): readonly MaterialLine[] {
  if (!model.ok) return [];
  return [
    ...model.value.sections.filter((x) => !(x.id in there.sections)).map(duct),
    ...jointLines(model.value, there),
    ...fittingLines(fittings),
    ...damperLines(model.value),
    ...(shut.ok ? grilleLines(shut.value.ways) : []),
    ...faces(model.value, there),
  ];
}

/** A run by the metre; board by the area of its walls, whatever the size of the duct. */
function duct(x: DuctSection): MaterialLine {
  const shape = shapeOf(x);
  const board = x.kind === 'board';
  return {
    id: `air/duct:${x.id}`,
    trade: 'air',
    what: `${kindNames[x.kind]} for “${x.name}”`,
    kind: board ? 'area' : 'length',
    amount: board ? x.surface : x.kind === 'flexible' ? flexibleNeeded(x.length, slackOf(x)) : x.length,
    for: `routes.ducts.sections.${x.id}`,
    like: board
      ? { id: 'board', what: 'Duct board, roughly by area' }
      : { id: shapeId(shape), what: `${kindNames[x.kind]}, ${sizeSaid(shape)}` },
  };
}

const kindNames = {
  flexible: 'Insulated flexible duct',
  round: 'Round metal duct',
  rectangular: 'Rectangular metal duct',
  board: 'Duct board',
} as const;

const faces = (model: AirModel, there: There): MaterialLine[] => [
  ...newTerminals(model, there).map(
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
