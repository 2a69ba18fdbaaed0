/** The state at one design point on which air, equipment and loads agree. All temperatures °C, flows m³/s, heat W. */
export type AgreedPoint = {
  readonly mode: 'heating' | 'cooling';
  /** Outdoor air, °C. */
  readonly outdoor: number;
  /** Room air, °C. */
  readonly indoor: number;
  readonly attic: number;
  /** Through the blower, m³/s actual at the blower. */
  readonly flow: number;
  /** External static pressure across the air handler, Pa. */
  readonly staticPressure: number;
  readonly entering: number;
  readonly leaving: number;
  /** Humidity ratio entering the coil, kg/kg: the rooms' with what leaking returns draw in. */
  readonly enteringHumidity: number;
  /** What the unit gives at its coil, W; cooling counts positive. */
  readonly sensible: number;
  readonly latent: number;
  /** What reaches the rooms, W, after what the ducts lose or gain and leak. */
  readonly delivered: number;
  /** By register: flow m³/s, temperature °C, heat to its room W. */
  readonly registers: Readonly<
    Record<string, { readonly flow: number; readonly temperature: number; readonly heat: number }>
  >;
  /** By duct section, m³/s. */
  readonly sections: Readonly<Record<string, number>>;
  /** Supply and return air lost to and taken from outside the rooms, m³/s. */
  readonly supplyLeak: number;
  readonly returnLeak: number;
  /** Heat the ducts give to the attic, W; negative where they take it. */
  readonly ductHeatToAttic: number;
};

/** How the design-point agreement went. Without a chosen unit and ducts there is no point to agree on. */
export type Agreement = {
  readonly converged: boolean;
  readonly sweeps: number;
  readonly residual: number;
  readonly heating?: AgreedPoint;
  readonly cooling?: AgreedPoint;
};

export const noAgreement: Agreement = { converged: false, sweeps: 0, residual: 0 };
