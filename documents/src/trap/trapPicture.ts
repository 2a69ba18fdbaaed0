/** mm across and mm down from the middle of the cabinet's outlet. */
export type Spot = readonly [number, number];

/** A trap in mm: drop and seal as the plan has them, the pipe's inner and outer diameter. */
export type TrapSizes = {
  readonly drop: number;
  readonly seal: number;
  readonly inner: number;
  readonly outer: number;
};

/** A measure to draw: from one height to another beside the trap; its words end at `words`. */
export type Measure = {
  readonly id: 'drop' | 'seal';
  readonly from: number;
  readonly to: number;
  readonly at: number;
  readonly words: number;
};

/** A word on the drawing, and which part of it stands at its spot. */
export type Name = { readonly at: Spot; readonly text: string; readonly anchor: 'start' | 'middle' | 'end' };

/**
 * Centre lines of the pipe and of its bore, which runs out of every open end; the cabinet's corner, the water standing in
 * the trap with the unit off, its measures, and what is named where.
 */
export type TrapPicture = {
  readonly pipe: readonly (readonly Spot[])[];
  readonly bore: readonly (readonly Spot[])[];
  readonly cabinet: readonly Spot[];
  readonly water: readonly Spot[];
  readonly measures: readonly Measure[];
  readonly names: readonly Name[];
  readonly box: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
};

/** mm from the cabinet to the first leg, between the legs, from the vent to the end, and of clean-outs above the pipe. */
const stub = 33;
const apart = 45;
const beyond = 62;
const cleanOut = 28;
/** mm that the bore is drawn past an open end, so that no hairline of the wall is left there. */
const past = 1;
/** mm left of the cabinet's wall that measures and the cabinet's name take. */
const aside = 34;

/**
 * The trap from the side, to scale. The drop reaches from the underside of the cabinet's outlet to that of the trap's own;
 * the seal from there to the upper side of the lowest pipe, which is where air would slip through.
 */
export function trapPicture({ drop, seal, inner, outer }: TrapSizes): TrapPicture {
  const half = inner / 2;
  const bottom = drop + seal + inner;
  const [first, second] = [stub, stub + apart];
  const vent = second + 38;
  const end = second + beyond;
  const ventTop = -(inner + 22);
  const through: readonly Spot[] = [
    [first, 0],
    [first, bottom],
    [second, bottom],
    [second, drop],
  ];
  const fall = (x: number): Spot => [x, drop + (x - second) / 96];
  const branches = (open: number): readonly (readonly Spot[])[] => [
    [[-open, 0], ...through, fall(end + open)],
    [
      [first, 0],
      [first, -cleanOut - open],
    ],
    [
      [second, drop],
      [second, drop - cleanOut - open],
    ],
    [
      [vent, drop],
      [vent, ventTop - open],
    ],
  ];
  return {
    pipe: branches(0),
    bore: branches(past),
    cabinet: [
      [0, -outer - 14],
      [0, outer / 2 + 4],
      [-aside, outer / 2 + 4],
    ],
    water: [
      [first - half, drop + half],
      [first - half, bottom + half],
      [second + half, bottom + half],
      [second + half, drop + half],
      [second - half, drop + half],
      [second - half, bottom - half],
      [first + half, bottom - half],
      [first + half, drop + half],
    ],
    measures: [
      { id: 'drop', from: half, to: drop + half, at: 7, words: 2 },
      { id: 'seal', from: drop + half, to: drop + half + seal, at: 7, words: 2 },
    ],
    names: [
      { at: [first, -cleanOut - 4], text: 'clean-out', anchor: 'middle' },
      { at: [second, drop - cleanOut - 4], text: 'clean-out', anchor: 'middle' },
      { at: [vent, ventTop - 4], text: 'open vent', anchor: 'middle' },
      { at: [end, drop + outer / 2 + 10], text: 'to the drain', anchor: 'end' },
      { at: [(first + second) / 2, bottom + 3], text: 'water', anchor: 'middle' },
      { at: [-4, 0], text: 'cabinet', anchor: 'end' },
    ],
    box: { left: -aside, right: end + 3, top: ventTop - 14, bottom: bottom + outer / 2 + 4 },
  };
}
