import type { Range } from '@kneewall/project';
import type { MaterialLine } from '../plan/lines.ts';
import { damperLines } from './balance/damperLines.ts';
import { grilleLines } from './doors/doorWork.ts';
import { fittingLines } from './fittingLines.ts';
import { jointLines } from './jointLines.ts';
import { lengthBought } from './lengthBought.ts';
import type { AirModel, AirResult, DuctSection } from './result.ts';
import { shapeOf } from './sizing/reshape.ts';
import { shapeId } from './sizing/stock.ts';

type Prices = AirResult['prices'];

/** Ducts by kind and size, collars, straps, registers, filter, sealing. */
export function materials({ model, prices, shut, fittings }: AirResult): readonly MaterialLine[] {
  if (!model.ok) return [];
  return [
    ...model.value.sections.map((x) => duct(x, prices)),
    ...jointLines(model.value, endsCost(flexibleOf(model.value), prices)),
    ...fittingLines(fittings),
    ...damperLines(model.value),
    ...(shut.ok ? grilleLines(shut.value.ways) : []),
    ...faces(model.value),
  ];
}

const pricesFor = (x: DuctSection, prices: Prices) => prices[shapeId(shapeOf(x))];

function duct(x: DuctSection, prices: Prices): MaterialLine {
  const price = pricesFor(x, prices)?.run;
  const amount = lengthBought(x.length);
  return {
    id: `air/duct:${x.id}`,
    trade: 'air',
    what: `${kindNames[x.kind]} for “${x.name}”`,
    kind: 'length',
    amount,
    for: `routes.ducts.sections.${x.id}`,
    ...(price?.piece === undefined ? {} : { soldBy: price.piece }),
    ...(price ? { cost: times(price, amount) } : {}),
  };
}

const times = ({ low, likely, high }: Range, by: number): Range => ({
  low: low * by,
  likely: likely * by,
  high: high * by,
});

const flexibleOf = (model: AirModel): DuctSection[] => model.sections.filter((x) => x.kind === 'flexible');

/** What both ends of every run cost, where each has a price. */
function endsCost(sections: readonly DuctSection[], prices: Prices): { cost?: Range } {
  const each = sections.map((x) => pricesFor(x, prices)?.end);
  const sum = { low: 0, likely: 0, high: 0 };
  for (const price of each) {
    if (!price) return {};
    for (const at of ['low', 'likely', 'high'] as const) sum[at] += 2 * price[at];
  }
  return each.length > 0 ? { cost: sum } : {};
}

const kindNames = {
  flexible: 'Insulated flexible duct',
  round: 'Round metal duct',
  rectangular: 'Rectangular metal duct',
  board: 'Duct board',
} as const;

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
