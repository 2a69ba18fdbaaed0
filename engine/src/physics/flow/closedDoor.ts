import { dischargeCoefficient, orificeArea } from './orifice.ts';

/** Ways out of a room whose door is shut: sharp openings to the rest of the house, m², and leaks Q = c pⁿ, m³/(s Paⁿ). */
export type WaysOut = {
  readonly opening: number;
  readonly leak: { readonly coefficient: number; readonly exponent: number };
};

export type ClosedDoor = {
  /** Pa by which the room differs from the hall. */
  readonly pressure: number;
  /** What the ways out miss of the flow, as a share of it. */
  readonly residual: number;
};

const stepsMost = 60;

/**
 * Pressure in a shut room that is fed `flow` (m³/s, positive), density kg/m³: openings by the orifice law and leaks by
 * their power law, both against the hall's pressure. Exponent 0.5 to 1. In √p the balance is convex and rises, so Newton
 * from above comes down to the one root without overshooting. Undefined where no way out is open. Source: `flow.closed-door`.
 */
export function closedDoorPressure(ways: WaysOut, flow: number, density: number): ClosedDoor | undefined {
  const { coefficient: c, exponent: n } = ways.leak;
  const k = dischargeCoefficient * ways.opening * Math.sqrt(2 / density);
  if (k <= 0 && c <= 0) return undefined;
  if (flow <= 0) return { pressure: 0, residual: 0 };
  const out = (u: number): number => k * u + c * u ** (2 * n);
  let u = Math.min(k > 0 ? flow / k : Number.POSITIVE_INFINITY, c > 0 ? (flow / c) ** (1 / (2 * n)) : Infinity);
  for (let i = 0; i < stepsMost; i++) {
    const next = u - (out(u) - flow) / (k + 2 * n * c * u ** (2 * n - 1));
    if (!(next < u)) break;
    u = next;
  }
  return { pressure: u * u, residual: (out(u) - flow) / flow };
}

/**
 * Sharp opening that holds a shut room at `pressure` (Pa above zero) while it is fed `flow` (m³/s), its leaks taking
 * their part, m². None is needed, 0, where the leaks alone are enough. Source: `flow.closed-door`.
 */
export function openingFor(pressure: number, flow: number, leak: WaysOut['leak'], density: number): number {
  const rest = flow - leak.coefficient * pressure ** leak.exponent;
  return rest > 0 ? orificeArea(rest, pressure, density) : 0;
}
