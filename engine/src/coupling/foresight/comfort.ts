/** K by which a house may be warmer than wanted, to hold heat, and cooler, before anybody minds. Source: `offgrid.comfort-band` (common practice). */
export const comfortBand = { warmer: 2, cooler: 1 } as const;
