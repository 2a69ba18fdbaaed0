import type { Cost } from '../../houseYear/measures.ts';
import type { PowerYearInputs } from '../powerYearJob.ts';

/** What can be changed. `panels` and `steep` name an array, `unit` a candidate. */
export type ChangeKind =
  | 'panels'
  | 'steep'
  | 'battery'
  | 'charger'
  | 'generator'
  | 'warm-box'
  | 'indoors'
  | 'cooler'
  | 'setback'
  | 'stove-days'
  | 'seal'
  | 'ceiling'
  | 'floor'
  | 'panes'
  | 'ducts'
  | 'unit'
  | 'aged';

/** One change to the whole, what it costs, and whether house and unit stay as they are, so that only power is different. */
export type Change = {
  readonly kind: ChangeKind;
  readonly of?: string;
  readonly inputs: PowerYearInputs;
  readonly cost?: Cost;
  readonly powerOnly?: true;
  /** Degrees of tilt of panels that are set up, or share of the battery that age has left. */
  readonly amount?: number;
};
