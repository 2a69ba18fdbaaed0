/** W between one size of unit and the next: 6,000 Btu/h. Source: `loads.sizes` (common practice). */
export const sizeStep = 1758.4;

/** Which size of unit a heating load asks for, counted in steps. */
export const sizeOf = (heating: number): number => Math.ceil(heating / sizeStep);
