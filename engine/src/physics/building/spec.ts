/** One layer of a wall, inside first: m, W/(mK), kg/m³, J/(kgK); or a plain resistance, m²K/W, that holds no heat. */
export type WallLayer =
  | { readonly thickness: number; readonly conductivity: number; readonly density: number; readonly heat: number }
  | { readonly resistance: number };

/** A face that looks into a zone. */
export type ZoneFace = {
  readonly side: 'zone';
  readonly zone: string;
  /** W/(m²K) from face to air, and what is added where the warm air rises off it and taken off where it lies still. */
  readonly convective: number;
  readonly swing?: number;
  /** +1 for a face that looks up (a floor), -1 for one that looks down; level faces only. */
  readonly looks?: 1 | -1;
  readonly emittance: number;
  /** W/(m²K) by radiation where it is prescribed; else it follows from the emittance. */
  readonly radiative?: number;
};

/** A face in the open air. Its film is a number, or follows the wind as 4 + 4 v times `smooth`. */
export type OutdoorFace = {
  readonly side: 'outdoors';
  readonly tilt: number;
  readonly azimuth: number;
  readonly absorptance: number;
  readonly emittance: number;
  readonly convective: number | { readonly wind: number };
  /** What keeps sun off the whole face, and the face's size; m. */
  readonly shaded?: { readonly width: number; readonly height: number; readonly shades: readonly Shade[] };
};

/** A face against something whose temperature is given through the year, such as deep ground; index into the series. */
export type GivenFace = { readonly side: 'given'; readonly series: number };

export type Slab = {
  readonly id: string;
  /** m² */
  readonly area: number;
  readonly layers: readonly WallLayer[];
  readonly inside: ZoneFace;
  readonly other: ZoneFace | OutdoorFace | GivenFace;
  /** Shares of the sun let into the zone that the inside face, and an other face in a zone, take up. */
  readonly sunShare?: number;
  readonly sunShareOther?: number;
};

/** Something that stands out beside or above a window; m, all measured from the window's own edges but where said. */
export type Shade =
  | {
      readonly kind: 'overhang';
      readonly depth: number;
      /** Above the head. */
      readonly offset: number;
      /** Beyond the edges, seen from outside. */
      readonly left: number;
      readonly right: number;
    }
  | {
      readonly kind: 'fin';
      readonly side: 'left' | 'right';
      readonly depth: number;
      /** From the edge. */
      readonly offset: number;
      /** Heights above the window's sill; negative is below. */
      readonly from: number;
      readonly to: number;
    };

/**
 * What glass does to the sun: shares by the cosine of its angle from the normal, in equal steps from 0 to 1; and for
 * even light from sky and ground.
 */
export type GlassOptics = {
  readonly transmitted: Float64Array;
  /** Taken up by the outer and the inner face. */
  readonly outer: Float64Array;
  readonly inner: Float64Array;
  readonly diffuse: { readonly transmitted: number; readonly outer: number; readonly inner: number };
};

/** A window: a slab of glass that lets sun through. */
export type Window = {
  readonly slab: Slab;
  readonly width: number;
  readonly height: number;
  readonly optics: GlassOptics;
  readonly shades: readonly Shade[];
  /** Share of the sun that a covering leaves. */
  readonly covering?: number;
};

export type Zone = {
  readonly id: string;
  /** m³ */
  readonly volume: number;
  /** J/K of things that follow the air, beside the air itself. */
  readonly contents?: number;
  /** Whether its radiation follows its own temperature (attics) or that of a lived-in room. */
  readonly wideRange?: boolean;
};

/** Outdoor air into zones. Flows in m³/s of outdoor air; each is shared out among the zones. */
export type Leakage =
  | { readonly kind: 'constant'; readonly zone: string; readonly flow: number }
  /** Stack and wind together, sqrt((a dTⁿ)² + (b v²ⁿ)²); the share `up` leaves into another zone instead of outdoors. */
  | {
      readonly kind: 'stack-and-wind';
      readonly shares: Readonly<Record<string, number>>;
      readonly stack: number;
      readonly wind: number;
      readonly exponent: number;
      readonly up?: { readonly zone: string; readonly share: number };
    };

/** Air exchanged both ways between two zones: m³/s for a difference of 1 K, growing with its root; and at least so much. */
export type Passage = {
  readonly between: readonly [string, string];
  readonly buoyant: number;
  readonly steady: number;
};

/** W, every day alike, one number for each hour of the day. */
export type Gain = { readonly zone: string; readonly watts: readonly number[]; readonly radiant: number };

/** Heats and cools the zones in fixed shares until the zone with the thermostat is where it should be. */
export type System = {
  readonly id: string;
  readonly sensor: string;
  readonly shares: Readonly<Record<string, number>>;
  /** °C at the start and the end of each hour of the day, so that a set point may rise in a line; null is off. */
  readonly heatTo: readonly (readonly [number, number] | null)[];
  readonly coolTo: readonly (readonly [number, number] | null)[];
  /** W, always or by row of weather; without it as much as it takes. */
  readonly heatMost?: number | Float64Array;
  readonly coolMost?: number | Float64Array;
};

/**
 * What a duct system does while its systems give so much heat or cold: where their heat goes, and what its fan moves.
 * Between two levels it lies on a line; below the first the fan runs part of the time; above the last nothing changes.
 */
export type DuctLevel = {
  /** W its systems give together, at the coil. */
  readonly output: number;
  /** Share of each system's heat by zone; instead of the system's own shares. */
  readonly carried: Readonly<Record<string, Readonly<Record<string, number>>>>;
  /** kg/s of air brought into a zone, from another or from outdoors. */
  readonly air: readonly { readonly into: string; readonly from: string; readonly flow: number }[];
  readonly drawn: Readonly<Record<string, number>>;
  /** W/K into a zone from another, beside what that air carries: what passes the ducts' walls. */
  readonly walls: readonly { readonly into: string; readonly from: string; readonly conductance: number }[];
  /** kg/s of air that a cold coil brings down to its own humidity, by the zone it is blown into. */
  readonly dries: Readonly<Record<string, number>>;
};

export type Ductwork = {
  readonly systems: readonly string[];
  /** By rising output, one at least. */
  readonly levels: readonly DuctLevel[];
  /** kg/kg of air that has touched the cold coil. */
  readonly coilRatio: number;
};

/** A fan for outdoor air, m³/s for each hour of the day. */
export type Fan = { readonly zone: string; readonly flow: readonly number[] };

export type Building = {
  /** Pa at the place. */
  readonly pressure: number;
  readonly zones: readonly Zone[];
  readonly slabs: readonly Slab[];
  readonly windows: readonly Window[];
  readonly leakage: readonly Leakage[];
  readonly passages: readonly Passage[];
  readonly gains: readonly Gain[];
  readonly systems: readonly System[];
  readonly ductworks?: readonly Ductwork[];
  readonly fans: readonly Fan[];
  /** Eave height over station wind, for the outdoor films. */
  readonly windFactor: number;
  readonly groundReflectance: number;
  /** °C of each given face by row of weather. */
  readonly series: readonly Float64Array[];
};

/** What a building gives off or holds beside its walls, by zone. */
export type Moisture = {
  /** kg/s for each hour of the day. */
  readonly vapour: readonly number[];
  /** kg of air that the zone's surfaces are worth, and hours in which they follow. */
  readonly bufferAir: number;
  readonly bufferHours: number;
  /** kg/kg its air is dried to while it is cooled. */
  readonly driest?: number;
};
