import type { QuantityKind } from '@kneewall/project';
import type { EffectFigures, LogEffect } from './logEffectJob.ts';

/** A figure that a log's values move, as screens, papers and the terminal name it. */
export type EffectLine = {
  readonly name: string;
  readonly kind: QuantityKind;
  readonly of: (figures: EffectFigures) => number;
};

const always: readonly EffectLine[] = [
  { name: 'Heat on the cold night', kind: 'power', of: (f) => f.night },
  { name: 'Electricity for the unit, a year', kind: 'energy', of: (f) => f.electricity },
];
const onOwnPower: readonly EffectLine[] = [
  { name: 'Fuel of the generator, a year', kind: 'volume', of: (f) => (f.power?.litres ?? 0) / 1000 },
  { name: 'Hours of the generator, a year', kind: 'count', of: (f) => f.power?.generator ?? 0 },
  { name: 'Nights the battery gives out without it', kind: 'count', of: (f) => f.power?.emptyNights ?? 0 },
];

/** The lines that a house has: those of own power only where there is any. */
export const effectLines = ({ before }: LogEffect): readonly EffectLine[] =>
  before.power ? [...always, ...onOwnPower] : always;

/** With which of a log's values: in the order in which they stand beside the plan alone. */
export const effectColumns = [
  ['loss', 'With the log’s loss'],
  ['power', 'With the log’s power'],
  ['household', 'With the log’s household'],
  ['all', 'With all of them'],
] as const;
