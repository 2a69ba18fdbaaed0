import { type MonthAir, magnusPressure, type VapourLayer } from '@kneewall/engine/physics';

export type WallCase = {
  readonly name: string;
  readonly layers: readonly VapourLayer[];
  readonly months: readonly MonthAir[];
};

export const films = { inside: 0.13, outside: 0.04 };

const air = (outdoor: number, rh: number, indoorRh: number, days: number): MonthAir => ({
  indoor: 20,
  outdoor,
  indoorVapour: indoorRh * magnusPressure(20),
  outdoorVapour: rh * magnusPressure(outdoor),
  days,
});
const strips = (count: number, resistance: number, sd: number): VapourLayer[] =>
  Array.from({ length: count }, () => ({ resistance: resistance / count, sd: sd / count }));

export const onePlane: WallCase = {
  name: 'one plane by hand',
  layers: [
    { resistance: 0.25, sd: 0.5 },
    { resistance: 0.12, sd: 4 },
  ],
  months: Array.from({ length: 12 }, (_, i) => (i < 3 ? air(-10, 0.8, 0.6, 30) : air(12, 0.75, 0.6, 30))),
};

export const twoPlanes: WallCase = {
  name: 'two planes by hand',
  layers: [
    { resistance: 0.25, sd: 0.3 },
    { resistance: 0.25, sd: 2 },
    { resistance: 0.25, sd: 0.4 },
    { resistance: 0.2, sd: 5 },
  ],
  months: [air(-15, 0.8, 0.7, 30)],
};

export const thickLayer: WallCase = {
  name: 'one thick layer',
  layers: [{ resistance: 5, sd: 5 }],
  months: [air(-10, 0.8, 0.7, 30)],
};

/** An invented cold coast. */
const means = [-5.5, -5.8, -2.9, 0.8, 4.6, 9, 13.2, 13.9, 10.1, 5.4, 1.2, -3.1];
const lengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const year = (indoorRh: number): MonthAir[] => means.map((t, i) => air(t, 0.8, indoorRh, lengths[i] ?? 30));

/** Board, wool in strips, sheathing, siding; and the same with a tight skin outside, which gathers at two planes. */
export const framedWall: WallCase = {
  name: 'framed wall',
  layers: [
    { resistance: 0.08, sd: 0.1 },
    ...strips(9, 2.25, 0.18),
    { resistance: 0.16, sd: 1 },
    { resistance: 0.12, sd: 0.6 },
  ],
  months: year(0.5),
};
export const tightSkin: WallCase = {
  name: 'tight skin outside',
  layers: [
    { resistance: 0.08, sd: 0.1 },
    ...strips(6, 1.5, 0.12),
    { resistance: 0.2, sd: 1 },
    ...strips(3, 0.75, 0.06),
    { resistance: 0.1, sd: 3 },
  ],
  months: year(0.6),
};
