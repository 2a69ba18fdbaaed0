/** What can be wrong. `kind` of each is a row of the table; those of runs stand once for every run. */
export type FaultKind =
  | 'none'
  | 'dirty-filter'
  | 'crushed-run'
  | 'shut-damper'
  | 'loose-run'
  | 'supply-leak'
  | 'return-leak'
  | 'return-choked'
  | 'blower-setting'
  | 'other-speed'
  | 'low-charge'
  | 'high-charge'
  | 'no-insulation'
  | 'blocked-drain'
  | 'strips-on'
  | 'no-transfer'
  | 'oversize'
  | 'sensor-place'
  | 'gauge-wrong'
  | 'flow-wrong'
  | 'thermometer-wrong'
  | 'base-load'
  | 'other';

/** A fault at one of its severities: what `size` means is said beside each row. */
export type Severity = { readonly size: number; readonly weight: number };

type FaultRow = {
  /** Chance before anything is read; that of runs is shared among them. Invented: `commissioning.priors`. */
  readonly prior: number;
  readonly severities: readonly Severity[];
};

const even = (...sizes: readonly number[]): Severity[] => sizes.map((size) => ({ size, weight: 1 / sizes.length }));
/** Kinds whose sizes are what the unit has: its other settings, its other speeds. */
const own: readonly Severity[] = [];

/**
 * Every fault that the engine is run with. Sizes of charge from papers as remembered, all others common practice
 * without a source. `none` and `other` are no faults: nothing is wrong, or something that is not in this table.
 */
export const faultRows: Readonly<Record<FaultKind, FaultRow>> = {
  none: { prior: 0.4, severities: even(0) },
  // Times the clean filter's pressure: loaded, clogged, or of the wrong kind.
  'dirty-filter': { prior: 0.1, severities: even(2, 4, 8) },
  // Times the run's own loss, friction and fittings.
  'crushed-run': { prior: 0.08, severities: even(2, 5, 15, 50) },
  // Times the register's resistance.
  'shut-damper': { prior: 0.06, severities: even(100, 1000) },
  // Share of what the run carries that is lost at its end.
  'loose-run': { prior: 0.05, severities: even(0.35, 0.65, 0.95) },
  // The same of the first section: plenum, trunk.
  'supply-leak': { prior: 0.04, severities: even(0.12, 0.25, 0.4) },
  'return-leak': { prior: 0.06, severities: even(0.12, 0.25, 0.4) },
  // Times the loss of return duct and grille.
  'return-choked': { prior: 0.06, severities: even(2, 4, 8) },
  'blower-setting': { prior: 0.05, severities: own },
  'other-speed': { prior: 0.05, severities: own },
  // Share of the charge that is missing, or too much.
  'low-charge': { prior: 0.06, severities: even(0.1, 0.2, 0.35) },
  'high-charge': { prior: 0.03, severities: even(0.1, 0.2, 0.3) },
  // Share of the insulation that is left on ducts outside the rooms.
  'no-insulation': { prior: 0.03, severities: even(0.4, 0.1) },
  // Share of the water that still comes out.
  'blocked-drain': { prior: 0.03, severities: even(0.6, 0.3, 0) },
  // Share of the strips that is on.
  'strips-on': { prior: 0.03, severities: even(0.5, 1) },
  // Share of what should stay open to the hall: carpet, a grille forgotten or stuffed. Only weighed where doors are shut.
  'no-transfer': { prior: 0.08, severities: even(0.5, 0.25, 0.1) },
  // The house's real loss against the planned.
  oversize: { prior: 0.03, severities: even(0.7, 0.5) },
  // K that the control believes too much or too little.
  'sensor-place': { prior: 0.03, severities: even(-4, -2, 2, 4) },
  // Times what a gauge, a bag or a vane should show: hoses, seal, volume, factor.
  'gauge-wrong': { prior: 0.04, severities: even(0.5, 0.7, 1.5) },
  'flow-wrong': { prior: 0.06, severities: even(0.55, 0.7, 1.4) },
  // K on the supply air: it sees coil or strips, or hangs in the leak.
  'thermometer-wrong': { prior: 0.04, severities: even(-6, -3, 3, 6) },
  // W of the house that are still in the reading, where the house's meter was read.
  'base-load': { prior: 0.06, severities: even(150, 300, 600, 1200) },
  other: { prior: 0.05, severities: even(0) },
};

/** Heat and draw of a unit whose charge is off, as shares of what it gives and draws. Source: `commissioning.charge`. */
export const chargeEffect = {
  low: (missing: number) => ({ capacity: 1 - 1.1 * missing, power: 1 - 0.45 * missing }),
  high: (over: number) => ({ capacity: 1 - 0.1 * over, power: 1 + 0.5 * over }),
} as const;
