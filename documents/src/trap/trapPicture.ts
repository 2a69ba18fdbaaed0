/** mm across and mm down from the middle of the cabinet's outlet. */
export type Spot = readonly [number, number];

/** A trap in mm: drop and seal as the plan has them, the pipe's inner and outer diameter. */
export type TrapSizes = {
  readonly drop: number;
  readonly seal: number;
  readonly inner: number;
  readonly outer: number;
};

/** A measure to draw: from one height to another beside the trap. */
export type Measure = { readonly id: 'drop' | 'seal'; readonly from: number; readonly to: number; readonly at: number };

/** Centre lines of the pipe, the water standing in it with the unit off, its measures, and what is named where. */
export type TrapPicture = {
  readonly pipe: readonly (readonly Spot[])[];
  readonly water: readonly Spot[];
  readonly measures: readonly Measure[];
  readonly names: readonly { readonly at: Spot; readonly text: string }[];
  readonly box: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
};

/** mm from the cabinet to the first leg, between the legs, from the vent to the end, and of clean-outs above the pipe. */
const stub = 33;
const apart = 45;
const beyond = 84;
const cleanOut = 28;

/**
 * The trap from the side, to scale. The drop reaches from the underside of the cabinet's outlet to that of the trap's own;
 * the seal from there to the upper side of the lowest pipe, which is where air would slip through.
 */
export function trapPicture({ drop, seal, inner, outer }: TrapSizes): TrapPicture {
  const half = inner / 2;
  const bottom = drop + seal + inner;
  const [first, second] = [stub, stub + apart];
  const vent = second + 45;
  const end = second + beyond;
  const ventTop = -(inner + 22);
  return {
    pipe: [
      [
        [0, 0],
        [first, 0],
        [first, bottom],
        [second, bottom],
        [second, drop],
        [end, drop + beyond / 96],
      ],
      [
        [first, 0],
        [first, -cleanOut],
      ],
      [
        [second, drop],
        [second, drop - cleanOut],
      ],
      [
        [vent, drop],
        [vent, ventTop],
      ],
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
      { id: 'drop', from: half, to: drop + half, at: first - half - 16 },
      { id: 'seal', from: drop + half, to: drop + half + seal, at: first - half - 16 },
    ],
    names: [
      { at: [first + outer / 2 + 2, -cleanOut + 6], text: 'clean-out' },
      { at: [second + outer / 2 + 2, drop - cleanOut + 4], text: 'clean-out' },
      { at: [vent + outer / 2 + 2, ventTop + 6], text: 'open vent' },
      { at: [end - 16, drop + outer / 2 + 8], text: 'to the drain' },
      { at: [2, -outer / 2 - 3], text: 'cabinet' },
    ],
    box: { left: -12, right: end + 8, top: ventTop - 6, bottom: bottom + outer + 8 },
  };
}
