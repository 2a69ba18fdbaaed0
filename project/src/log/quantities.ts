/** What a column of a log may hold, in the unit in which it is kept, and what cannot be. */
export type LogQuantity = keyof typeof logQuantities;
export type LogSpec = {
  readonly label: string;
  readonly dimension: 'temperature' | 'power' | 'flow' | 'irradiance' | 'velocity' | 'humidity';
  readonly least: number;
  readonly most: number;
};

const temperature = { dimension: 'temperature', least: -60, most: 90 } as const;
const power = { dimension: 'power', least: -50_000, most: 100_000 } as const;
const indoor = { ...temperature, least: -20, most: 60 } as const;

/** What is said more exactly comes first: headings are tried in this order. */
export const logQuantities = {
  supply: { label: 'Supply air', ...temperature },
  return: { label: 'Return air', ...temperature },
  outdoor: { label: 'Outdoor air', ...temperature },
  indoor: { label: 'Indoor air', ...indoor },
  indoor2: { label: 'Indoor air, second place', ...indoor },
  indoor3: { label: 'Indoor air, third place', ...indoor },
  heat: { label: 'Heat given to the house', ...power },
  unitPower: { label: 'Power of the unit', ...power },
  sunPower: { label: 'Power of the panels', ...power },
  battery: { label: 'Power of the battery', ...power },
  housePower: { label: 'Power of the whole house', ...power },
  flow: { label: 'Air flow of the unit', dimension: 'flow', least: 0, most: 5 },
  sun: {
    label: 'Sun on the level',
    dimension: 'irradiance',
    least: -20,
    most: 1600,
  },
  wind: { label: 'Wind speed', dimension: 'velocity', least: 0, most: 80 },
  humidity: { label: 'Indoor humidity', dimension: 'humidity', least: 0, most: 1 },
} as const satisfies Readonly<Record<string, LogSpec>>;

export const logQuantityIds = Object.keys(logQuantities) as readonly LogQuantity[];

type Unit = {
  readonly dimension: LogSpec['dimension'];
  readonly label: string;
  readonly times: number;
  readonly plus?: number;
  readonly counts?: 'meter' | 'each';
};

const cubicFoot = 0.3048 ** 3;
/** Units by id: kept = read × times + plus. `meter`: a counter that only rises; `each`: the energy since the row before. */
export const logUnits = {
  C: { dimension: 'temperature', label: '°C', times: 1 },
  F: { dimension: 'temperature', label: '°F', times: 5 / 9, plus: -160 / 9 },
  W: { dimension: 'power', label: 'W', times: 1 },
  kW: { dimension: 'power', label: 'kW', times: 1000 },
  'Wh-meter': { dimension: 'power', label: 'Wh, a meter that only rises', times: 1, counts: 'meter' },
  'kWh-meter': { dimension: 'power', label: 'kWh, a meter that only rises', times: 1000, counts: 'meter' },
  'Wh-each': { dimension: 'power', label: 'Wh in each row', times: 1, counts: 'each' },
  'kWh-each': { dimension: 'power', label: 'kWh in each row', times: 1000, counts: 'each' },
  m3s: { dimension: 'flow', label: 'm³/s', times: 1 },
  m3h: { dimension: 'flow', label: 'm³/h', times: 1 / 3600 },
  Ls: { dimension: 'flow', label: 'L/s', times: 0.001 },
  cfm: { dimension: 'flow', label: 'cfm', times: cubicFoot / 60 },
  Wm2: { dimension: 'irradiance', label: 'W/m²', times: 1 },
  kWm2: { dimension: 'irradiance', label: 'kW/m²', times: 1000 },
  ms: { dimension: 'velocity', label: 'm/s', times: 1 },
  kmh: { dimension: 'velocity', label: 'km/h', times: 1 / 3.6 },
  mph: { dimension: 'velocity', label: 'mph', times: 0.44704 },
  percent: { dimension: 'humidity', label: '%', times: 0.01 },
  share: { dimension: 'humidity', label: 'share of 1', times: 1 },
} as const satisfies Readonly<Record<string, Unit>>;

export type LogUnit = keyof typeof logUnits;
export const unitsOfDimension = (dimension: LogSpec['dimension']): readonly LogUnit[] =>
  (Object.keys(logUnits) as LogUnit[]).filter((id) => logUnits[id].dimension === dimension);

export const unitOf = (id: LogUnit): Unit => logUnits[id];
export const quantityOf = (id: LogQuantity): LogSpec => logQuantities[id];
