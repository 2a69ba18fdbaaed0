export type { DuctOption, Space } from './candidates.ts';
export type { Fitting } from './fittingLoss.ts';
export { fittingsOf } from './fittingsOf.ts';
export {
  nextSizeWords,
  pricesWords,
  proofWords,
  relaxationWords,
  runnerUpWords,
  shapeWords,
  sizingSentence,
} from './messages.ts';
export type { DuctSizingInput, SectionSizing } from './setUp.ts';
export type { DuctSizing } from './sizeDucts.ts';
export { sizeDucts, sizedModel } from './sizeDucts.ts';
export { solveSizing } from './solveSizing.ts';
export type {
  BrokenLimit,
  ExchangePoint,
  HardestWay,
  NextSize,
  Relaxation,
  SizedSystem,
  Sizing,
  SizingChoice,
  SizingGoal,
  SizingOption,
  SizingProof,
  SizingSection,
  SizingSpec,
  SizingTotals,
} from './spec.ts';
export type { DuctKind, DuctShape } from './stock.ts';
export type { UnitPressure } from './unitPressure.ts';
export type { DuctRole, VelocityLimits } from './velocity.ts';
