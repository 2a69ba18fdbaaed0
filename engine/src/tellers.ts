import { accessTeller } from './access/teller.ts';
import { airTeller } from './air/teller.ts';
import { circuitTeller } from './circuit/teller.ts';
import { climateTeller } from './climate/teller.ts';
import { commissioningTeller } from './commissioning/teller.ts';
import { condensateTeller } from './condensate/teller.ts';
import { equipmentTeller } from './equipment/teller.ts';
import { linesetTeller } from './lineset/teller.ts';
import { loadsTeller } from './loads/teller.ts';
import { offgridTeller } from './offgrid/teller.ts';
import type { Teller } from './plan/trade.ts';
import type { TradeResults } from './results.ts';
import { scheduleTeller } from './schedule/teller.ts';

/** A teller with its own result type forgotten. */
export type AnyTeller = Teller<keyof TradeResults>;

/** What the built trades tell with, by trade: a trade that finds and cannot tell does not compile. */
export const tellers = {
  climate: climateTeller,
  loads: loadsTeller,
  equipment: equipmentTeller,
  air: airTeller,
  condensate: condensateTeller,
  lineset: linesetTeller,
  circuit: circuitTeller,
  offgrid: offgridTeller,
  access: accessTeller,
  schedule: scheduleTeller,
  commissioning: commissioningTeller,
} satisfies { readonly [Id in keyof TradeResults]: Teller<Id> } as unknown as Readonly<
  Record<keyof TradeResults, AnyTeller>
>;
