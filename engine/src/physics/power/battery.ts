/** Times its capacity in an hour that lithium iron phosphate takes, from so many °C up: gently, and at most. */
const chargeRates = [
  { from: Number.NEGATIVE_INFINITY, gentle: 0, most: 0 },
  { from: 0, gentle: 0.1, most: 0.1 },
  { from: 5, gentle: 0.1, most: 0.2 },
  { from: 10, gentle: 0.2, most: 1 },
  { from: 25, gentle: 0.5, most: 0.75 },
  { from: 50, gentle: 0.1, most: 0.1 },
  { from: 60, gentle: 0, most: 0 },
] as const;

const dischargeRates = [
  { from: Number.NEGATIVE_INFINITY, gentle: 0, most: 0 },
  { from: -40, gentle: 0.1, most: 0.1 },
  { from: -20, gentle: 0.1, most: 0.5 },
  { from: 0, gentle: 0.2, most: 1 },
  { from: 60, gentle: 0, most: 0 },
] as const;

type Rate = { readonly gentle: number; readonly most: number };
const rateAt = (rates: readonly (Rate & { readonly from: number })[], cell: number): Rate =>
  rates.findLast((r) => r.from <= cell) ?? { gentle: 0, most: 0 };

/** 1/h that lithium iron phosphate cells take at °C. Source: `power.lithium-rates`. */
export const lithiumCharge = (cell: number): Rate => rateAt(chargeRates, cell);
/** 1/h that they give. Source: `power.lithium-rates`. */
export const lithiumDischarge = (cell: number): Rate => rateAt(dischargeRates, cell);

/** Hours for which lead gives a current, A: rated Ah over so many hours (Peukert). Source: `power.peukert`. */
export const peukertHours = (current: number, rated: number, over: number, exponent: number): number =>
  over * (rated / (current * over)) ** exponent;

/** A share of the capacity at 25 °C by rising °C, on straight lines and level beyond their ends. */
export type ByTemperature = readonly (readonly [number, number])[];

/** Lithium iron phosphate, given what is left at -20 °C, and lead. Source: `power.cold-capacity`. */
export const coldLithium = (atMinus20: number): ByTemperature => [
  [-20, atMinus20],
  [0, 0.8],
  [25, 1],
];
export const coldLead: ByTemperature = [
  [-20, 0.5],
  [0, 0.78],
  [25, 1],
];

/** The share at °C. */
export function capacityShare(line: ByTemperature, cell: number): number {
  const above = line.findIndex(([t]) => t >= cell);
  const [high, low] = [line[above] ?? line.at(-1), line[above - 1] ?? line[above] ?? line.at(-1)];
  if (!high || !low) return 1;
  return high[0] === low[0] ? high[1] : low[1] + ((cell - low[0]) / (high[0] - low[0])) * (high[1] - low[1]);
}

/** Years to the end of life, by cycles a year and by age, whichever comes first. Source: `power.ageing`. */
export const yearsOfLife = (cyclesInAll: number, cyclesAYear: number, shelf: number): number =>
  cyclesAYear > 0 ? Math.min(shelf, cyclesInAll / cyclesAYear) : shelf;
