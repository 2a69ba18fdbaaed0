/** A that `power` W is at `voltage` V, of a power factor of one. */
export const currentOf = (power: number, voltage: number): number => power / voltage;

/** A out of the battery for `power` W of AC, through an inverter of that efficiency. */
export const batteryCurrent = (power: number, voltage: number, efficiency: number): number =>
  power / (voltage * efficiency);

/** VA for a fraction of a second while a compressor that is switched straight on starts. `current`: its locked-rotor current, A. */
export const startingPower = (current: number, voltage: number): number => current * voltage;

/** What a soft starter leaves of a starting current: it takes 50 to 70 % off. Source: `circuit.soft-start`. */
export const softStartLeaves = { low: 0.3, likely: 0.4, high: 0.5 } as const;
