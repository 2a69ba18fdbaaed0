/** Part of some leaks: m above the lowest floor, the way it faces (degrees from north; nothing: all ways alike), its share. */
export type LeakPlace = { readonly height: number; readonly faces?: number; readonly share: number };

/** Pa a metre that the air indoors gains on that outdoors, Pa of wind at the eaves stopped dead, and where it comes from. */
export type Weather = { readonly rise: number; readonly wind: number; readonly from: number };

/** A room behind a shut door: what stays open to the hall, m², and its own leaks to outdoors, m³/(s Paⁿ). */
export type ShutRoom = {
  readonly id: string;
  readonly opening: number;
  readonly leak: number;
  readonly places?: readonly LeakPlace[];
};

/** A house with its doors shut. Rooms that are not named are one with the hall: an open door drops less than 0.01 Pa. */
export type HouseAir = {
  readonly rooms: readonly ShutRoom[];
  /** Leaks of all that is open to the hall, Q = c pⁿ; without them the hall is held at the pressure of outdoors. */
  readonly leaks?: { readonly open: number; readonly exponent: number; readonly places?: readonly LeakPlace[] };
  /** m³/s blown outdoors by fans other than the blower, by room; rooms that are not named count to the hall. */
  readonly exhaust: Readonly<Record<string, number>>;
  /** m above the lowest floor at which the attic begins; nothing blows and nothing is warmer than outdoors unless told. */
  readonly top?: number;
  readonly weather?: Weather;
};

/** What shut doors do to a room. Pressures are those at the lowest floor; each room's air is as warm as the hall's. */
export type ShutRoomAir = {
  /** Pa against the hall and against outdoors. */
  readonly pressure: number;
  readonly outdoors: number;
  /** m³/s its registers blow in, and the share that is lost of what they do with all doors open. */
  readonly supply: number;
  readonly lost: number;
  /** m³/s blown in less what its own grilles take. */
  readonly net: number;
  /** What is open to the hall, m². */
  readonly opening: number;
  readonly leak: number;
  /** Opening that would hold it at the pressure allowed, the other doors as they are; where it is above that. */
  readonly enough?: number;
};

/** Ducts, blower and rooms solved together with the doors shut. */
export type ShutDoors = {
  readonly converged: boolean;
  readonly residual: number;
  /** m³/s of the blower, and Pa across it. */
  readonly flow: number;
  readonly staticPressure: number;
  /** Pa of the hall, and all that is open to it, against outdoors. */
  readonly house: number;
  readonly rooms: Readonly<Record<string, ShutRoomAir>>;
};
