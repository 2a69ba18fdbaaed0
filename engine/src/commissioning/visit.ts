import type { UnitSpeed } from '../equipment/result.ts';

/** What a reading is taken with. */
export type Means = 'gauge' | 'bag' | 'vane' | 'hood' | 'thermometer' | 'meter' | 'clamp' | 'house' | 'cup' | 'watch';

/** The state in which readings were taken. °C; humidity as a share of saturation. */
export type VisitState = {
  readonly mode: 'heating' | 'cooling';
  readonly speed: Extract<UnitSpeed, 'most' | 'between' | 'least'>;
  /** The blower's setting by name, where it was not the planned one. */
  readonly setting?: string;
  readonly outdoor: number;
  readonly returnAir: number;
  readonly returnHumidity: number;
  /** Whether that was read; else it is the set point's. */
  readonly humidityRead: boolean;
  readonly attic?: number;
  /** Pa of outdoor air. */
  readonly pressure: number;
};

/** One number that was read. Unit of the kind it is held against. */
export type Taken = {
  readonly id: string;
  readonly expected: string;
  readonly value: number;
  readonly means?: Means;
  readonly repeats: number;
  readonly baseTaken: 'unknown' | 'yes' | 'no';
};
