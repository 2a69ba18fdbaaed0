/** What lies on the other side of a heat path. A crawl space is folded into the path's own conductance. */
export type OtherSide = 'outdoors' | 'attic' | 'ground' | 'unheated';

/** One path of heat out of one room. */
export type Element = {
  readonly room: string;
  readonly part: PartId;
  readonly subject: string;
  /** W/K */
  readonly conductance: number;
  readonly side: OtherSide;
  /** W into the room by hour of the hot day from the sun alone; empty where none reaches it. */
  readonly sun: readonly number[];
  /** Outside wall area that leaks, m². */
  readonly leaks: number;
  /** Which way that area faces, degrees from north; nothing where it is on all sides alike. */
  readonly faces?: number;
};

/** The house in one scenario: paths of heat, volumes, and what is over it. */
export type HouseElements = {
  readonly elements: readonly Element[];
  /** m³ by room. */
  readonly volumes: Readonly<Record<string, number>>;
  /** m² of ceiling below the attic, seen from above. */
  readonly atticFloor: number;
};

/** What carries heat in or out. */
export type PartId =
  | 'walls'
  | 'windows'
  | 'doors'
  | 'ceiling'
  | 'roof'
  | 'floor'
  | 'air'
  | 'sun'
  | 'people'
  | 'appliances';
