/** A place where flows meet. With `pressure` it is held, else its flows sum to `outflow` (m³/s leaving the network). */
export type NetworkNode = { readonly id: string; readonly pressure?: number; readonly outflow?: number };

type Ends = {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  /** Share of the link's flow that its `from` gives and that reaches its `to`; the rest leaks in or out. 1 unless told. */
  readonly leave?: number;
  readonly arrive?: number;
};

/** A passage between two nodes; flow counts positive from `from` to `to`. Lengths m, flows m³/s, pressures Pa. */
export type NetworkLink =
  | (Ends & {
      readonly kind: 'duct';
      readonly length: number;
      readonly diameter: number;
      readonly area: number;
      readonly roughness: number;
      /** Multiplies friction: slack flexible duct. */
      readonly factor?: number;
      /** Sum of loss coefficients on the duct's own velocity pressure. */
      readonly loss?: number;
      /** Re from which flow is turbulent, 2300 or more, 4000 unless told; from 2300 to it friction goes a straight line. */
      readonly turbulentFrom?: number;
      readonly density: number;
      readonly viscosity: number;
    })
  /** Pressure = coefficient × flow^exponent, exponent 1 to 2. */
  | (Ends & { readonly kind: 'power'; readonly coefficient: number; readonly exponent: number })
  /**
   * A flap that opens from `from` to `to`: as `power` once 0.1 Pa holds it open, easing in below, and a leak of
   * `leak` m³/s per Pa both ways, so that its conductance never jumps and never vanishes.
   */
  | (Ends & {
      readonly kind: 'one-way';
      readonly coefficient: number;
      readonly exponent: number;
      readonly leak: number;
    })
  /** Lifts pressure from `from` to `to` by a curve through these points, in order of rising flow. */
  | (Ends & { readonly kind: 'fan'; readonly points: readonly { readonly flow: number; readonly pressure: number }[] });

export type NetworkSpec = { readonly nodes: readonly NetworkNode[]; readonly links: readonly NetworkLink[] };
