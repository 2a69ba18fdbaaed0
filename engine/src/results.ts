import type { AccessResult } from './access/result.ts';
import type { AirResult } from './air/result.ts';
import type { CircuitResult } from './circuit/result.ts';
import type { ClimateResult } from './climate/result.ts';
import type { CommissioningResult } from './commissioning/result.ts';
import type { CondensateResult } from './condensate/result.ts';
import type { EquipmentResult } from './equipment/result.ts';
import type { LinesetResult } from './lineset/result.ts';
import type { LoadsResult } from './loads/result.ts';
import type { OffgridResult } from './offgrid/result.ts';
import type { ScheduleResult } from './schedule/result.ts';

/** Each trade's result, by its id. Adding a trade adds a line here and one in the list of trades. */
export type TradeResults = {
  readonly climate: ClimateResult;
  readonly loads: LoadsResult;
  readonly equipment: EquipmentResult;
  readonly air: AirResult;
  readonly condensate: CondensateResult;
  readonly lineset: LinesetResult;
  readonly circuit: CircuitResult;
  readonly offgrid: OffgridResult;
  readonly access: AccessResult;
  readonly schedule: ScheduleResult;
  readonly commissioning: CommissioningResult;
};
