/** m to buy for a run of so many metres: ends and waste come to a tenth. Source: `air.sizing-waste` (common practice). */
export const lengthBought = (run: number): number => run * 1.1;
