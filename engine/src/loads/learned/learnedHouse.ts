import type { Given, Missing, ResolvedProject } from '@kneewall/project';
import type { LearnedHouse, LoadsResult } from '../result.ts';

type House = ResolvedProject['house'];

/** A house before anything that was learned of it. */
export const asEntered = (house: House): House => ({
  ...house,
  learned: { ...house.learned, loss: { path: 'house.learned.loss', missing: true } },
});

/** What was taken from a log, beside what the plan says without it; undefined where nothing was. */
export function learnedHouse(house: House, own: (entered: House) => LoadsResult): LearnedHouse | undefined {
  const { loss, lossPerDegree: told, ...from } = house.learned;
  if ('missing' in loss) return undefined;
  const { heating, lossPerDegree } = own(asEntered(house));
  return {
    log: from.log ?? '',
    from: from.from ?? '',
    to: from.to ?? '',
    accepted: from.accepted ?? '',
    times: rangeOf(loss),
    ...('missing' in told ? {} : { told: rangeOf(told) }),
    own: { heating, lossPerDegree },
    measured: measuredIn(house),
  };
}

const rangeOf = ({ low, likely, high }: Given) => ({ low, likely, high });

const measured = (field: Given | Missing): readonly string[] =>
  'missing' in field || field.known !== 'measured' ? [] : [field.path];

/** What decides the loss and is marked measured: blower door, U of walls and glass. */
const measuredIn = (house: House): readonly string[] => [
  ...measured(house.airtightness),
  ...Object.values(house.assemblies).flatMap((a) => [
    ...measured(a.uValue),
    ...Object.values(a.layers).flatMap((l) => [...measured(l.conductivity), ...measured(l.resistance)]),
  ]),
  ...Object.values(house.openings).flatMap((o) => measured(o.uValue)),
];
