import type { HouseAir } from '../../air/doors/houseAir.ts';
import type { AirModel } from '../../air/ductwork.ts';
import type { VisitState } from '../../commissioning/visit.ts';
import type { BlowerModel, BlowerTable, UnitModel, UnitSpeed } from '../../equipment/result.ts';
import type { AtticModel } from '../../loads/attic.ts';

/** Ducts, unit and house in the state of a visit: plain data, so that equal ones make equal jobs. */
export type AsBuilt = {
  readonly air: AirModel;
  readonly unit: UnitModel;
  readonly blower: BlowerModel;
  readonly attic: AtticModel;
  /** W of strips that are on, and of those that are there. */
  readonly stripsOn: number;
  readonly strips: number;
  /** W that the unit draws beside compressor and fan. */
  readonly standing: number;
  /** W for each K by which the rooms are warmer than outdoors; absent where the load is not known. */
  readonly loss?: number;
  readonly state: Omit<VisitState, 'speed'> & { readonly speed: UnitSpeed };
  /** K by which the attic is warmer than worked out, where it was not read. */
  readonly atticShift?: number;
  /** With its doors shut; absent where they stand open. */
  readonly house?: HouseAir;
};

/** What a visit is held against: the system, the blower's other settings, and the unit's other speeds with theirs. */
export type ResponsesInputs = {
  readonly system: AsBuilt;
  readonly settings: readonly BlowerTable[];
  readonly speeds: readonly { readonly speed: UnitSpeed; readonly blower: BlowerTable }[];
};

/** What kind of reading a channel is: causes are told apart by more than one of them. */
export type Group = 'pressure' | 'room-pressure' | 'flow' | 'temperature' | 'power' | 'water' | 'time';

/** One number that can be read. */
export type Channel = {
  readonly id: string;
  readonly group: Group;
  /** The terminal it is read at, or the room. */
  readonly subject?: string;
};

export type Response = { readonly channel: Channel; readonly value: number };
