export type Coupling = 'good' | 'fair' | 'poor';
/** A lift: cm (inches in the inch form), degrees, lifts a minute, hours of it. */
export type Lift = {
  /** From the ankles out to the hands. */
  readonly reach: number;
  /** Hands above the floor where it starts (or ends). */
  readonly height: number;
  readonly travel: number;
  readonly twist: number;
  readonly perMinute: number;
  readonly hours: 1 | 2 | 8;
  readonly coupling: Coupling;
};
export type Multipliers = Readonly<Record<'HM' | 'VM' | 'DM' | 'AM' | 'FM' | 'CM', number>>;

/** kg that nearly everybody may lift in the best of poses. Source: `access.lifting`. */
export const loadConstant = 23;

/** The equation's own constants; it is published in centimetres and in inches, which differ a little. Source: `access.lifting`. */
export type Form = {
  readonly reach: readonly [ideal: number, most: number];
  readonly height: readonly [ideal: number, most: number, perUnit: number];
  readonly travel: readonly [least: number, most: number, share: number];
};
export const metricForm: Form = { reach: [25, 63], height: [75, 175, 0.003], travel: [25, 175, 4.5] };
export const inchForm: Form = { reach: [10, 25], height: [30, 70, 0.0075], travel: [10, 70, 1.8] };

/** By lifts a minute: up to 1 h low and high, 1 to 2 h, 2 to 8 h; low is below 75 cm. Source: `access.lifting`. */
const frequency: readonly (readonly number[])[] = [
  [0.2, 1, 1, 0.95, 0.95, 0.85, 0.85],
  [0.5, 0.97, 0.97, 0.92, 0.92, 0.81, 0.81],
  [1, 0.94, 0.94, 0.88, 0.88, 0.75, 0.75],
  [2, 0.91, 0.91, 0.84, 0.84, 0.65, 0.65],
  [3, 0.88, 0.88, 0.79, 0.79, 0.55, 0.55],
  [4, 0.84, 0.84, 0.72, 0.72, 0.45, 0.45],
  [5, 0.8, 0.8, 0.6, 0.6, 0.35, 0.35],
  [6, 0.75, 0.75, 0.5, 0.5, 0.27, 0.27],
  [7, 0.7, 0.7, 0.42, 0.42, 0.22, 0.22],
  [8, 0.6, 0.6, 0.35, 0.35, 0.18, 0.18],
  [9, 0.52, 0.52, 0.3, 0.3, 0, 0.15],
  [10, 0.45, 0.45, 0.26, 0.26, 0, 0.13],
  [11, 0.41, 0.41, 0, 0.23, 0, 0],
  [12, 0.37, 0.37, 0, 0.21, 0, 0],
  [13, 0, 0.34, 0, 0, 0, 0],
  [14, 0, 0.31, 0, 0, 0, 0],
  [15, 0, 0.28, 0, 0, 0, 0],
];

/** The table's share for so many lifts a minute: the next row's where it lies between two. 0 beyond the last. */
export function frequencyMultiplier(perMinute: number, hours: 1 | 2 | 8, low: boolean): number {
  const line = frequency.find(([often = 0]) => perMinute <= often);
  return line?.[1 + 2 * { 1: 0, 2: 1, 8: 2 }[hours] + (low ? 0 : 1)] ?? 0;
}

const couplings: Readonly<Record<Coupling, readonly [number, number]>> = {
  good: [1, 1],
  fair: [0.95, 1],
  poor: [0.9, 0.9],
};

/** All six shares of a lift. A reach, height, travel or twist beyond the equation's ends gives 0. Source: `access.lifting`. */
export function multipliers(lift: Lift, form: Form = metricForm): Multipliers {
  const { reach, height, travel, twist, perMinute, hours, coupling } = lift;
  const [[near, far], [ideal, high, slope], [least, most, share]] = [form.reach, form.height, form.travel];
  const low = height < ideal;
  return {
    HM: reach > far ? 0 : reach <= near ? 1 : near / reach,
    VM: height < 0 || height > high ? 0 : 1 - slope * Math.abs(height - ideal),
    DM: travel > most ? 0 : travel <= least ? 1 : 0.82 + share / travel,
    AM: twist > 135 ? 0 : 1 - 0.0032 * twist,
    FM: frequencyMultiplier(perMinute, hours, low),
    CM: couplings[coupling][low ? 0 : 1],
  };
}

/** kg that one person may lift so. */
export function weightLimit(lift: Lift): number {
  const { HM, VM, DM, AM, FM, CM } = multipliers(lift);
  return loadConstant * HM * VM * DM * AM * FM * CM;
}

/** Of the sum of what each may lift, what several may lift together: two two thirds, three or more half. Source: `access.together`. */
export const togetherShare = (people: number): number => (people <= 1 ? 1 : people === 2 ? 2 / 3 : 1 / 2);
