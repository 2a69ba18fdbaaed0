import type { MaterialLine } from '../plan/lines.ts';
import { damperLines } from './balance/damperLines.ts';
import type { AirModel, AirResult, DuctSection } from './result.ts';

/** Length bought beyond the run for ends and waste. Common practice. */
const allowance = 1.1;

/** Ducts by kind and size, collars, straps, registers, filter, sealing. */
export function materials({ model }: AirResult): readonly MaterialLine[] {
  if (!model.ok) return [];
  return [
    ...model.value.sections.map(duct),
    ...joints(model.value),
    ...damperLines(model.value),
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

function joints(model: AirModel): MaterialLine[] {
  const flexible = model.sections.filter((x) => x.kind === 'flexible');
  const count = (id: string, what: string, amount: number): MaterialLine => ({
    id: `air/${id}`,
    trade: 'air',
    what,
    kind: 'count',
    amount,
    soldBy: 1,
  });
  const hangers = flexible.reduce((a, x) => a + Math.ceil(x.length / x.supports), 0);
  return [
    count('collars', 'Collars and inner-core straps, two a flexible run', 2 * flexible.length),
    count('hangers', 'Saddle hangers, at least 1 1/2 in wide', hangers),
    count('mastic', 'Tubs of mastic', Math.max(1, Math.ceil(model.sections.length / 6))),
    count('test-ports', 'Plugs for two pressure test ports', 2),
  ];
}

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
