/**
 * kg of refrigerant to add for a line of `length` m: nothing up to the length the factory's charge covers, and never less
 * than nothing. `perMetre` kg/m. Source: `lineset.charge`.
 */
export const chargeToAdd = (length: number, covered: number, perMetre: number): number =>
  Math.max(0, length - covered) * perMetre;
