export type System = 'us' | 'si';

/** One unit: how it is printed, how people write it, and base = text × factor + offset. */
export type Unit = {
  readonly symbol: string;
  readonly spellings: readonly string[];
  readonly factor: number;
  readonly offset?: number;
};

export type Kind = {
  /** The unit numbers of this kind are in everywhere, as printed. */
  readonly unit: string;
  readonly units: readonly Unit[];
  /** The unit shown in each system, by symbol, and the step it is rounded to on forms. */
  readonly shown: Readonly<Record<System, { readonly unit: string; readonly step: number }>>;
};

const u = (symbol: string, spellings: string, factor: number, offset?: number): Unit => ({
  symbol,
  spellings: [symbol, ...spellings.split('|').filter((s) => s !== '')],
  factor,
  ...(offset === undefined ? {} : { offset }),
});
const shown = (us: string, usStep: number, si: string, siStep: number) => ({
  us: { unit: us, step: usStep },
  si: { unit: si, step: siStep },
});

// Exact by definition unless said (NIST SP 811; the international inch, pound and table Btu).
export const inch = 0.0254;
export const foot = 0.3048;
const pound = 0.45359237;
const btu = 1055.05585262;
const btuPerHour = btu / 3600;
const gallon = 3.785411784e-3;
const fahrenheit = 5 / 9;
/** Conventional inch of water at 4 °C. */
const inchWater = 249.08891;
const inchWaterSpellings = 'in H2O|inH₂O|in. H2O|in w.c.|in. w.c.|inwc|in wc|iwc|" wc|"wc|" w.c.|"w.c.|" H2O';
const rUs = (foot * foot * fahrenheit) / btuPerHour;

/** Every quantity kind: one readable unit inside, the units people write, and the one each system shows. */
export const kinds = {
  temperature: {
    unit: '°C',
    units: [
      u('°C', 'C|degC|deg C|° C|celsius|degrees C|degrees celsius', 1),
      u('°F', 'F|degF|deg F|° F|fahrenheit|degrees F|degrees fahrenheit', fahrenheit, -160 / 9),
      u('K', 'kelvin', 1, -273.15),
    ],
    shown: shown('°F', 0.1, '°C', 0.1),
  },
  'temperature-difference': {
    unit: 'K',
    units: [u('K', '°C|C|degC|C°', 1), u('°F', 'F|F°|degF', fahrenheit)],
    shown: shown('°F', 0.1, 'K', 0.1),
  },
  'degree-hours': {
    unit: 'K h',
    units: [
      u('K h', 'K·h|°C h', 1),
      u('°F h', '°F·h|F h', fahrenheit),
      u('K days', 'K d', 24),
      u('°F days', 'F days', 24 * fahrenheit),
    ],
    shown: shown('°F h', 1, 'K h', 1),
  },
  length: {
    unit: 'm',
    units: [
      u('m', 'metre|metres|meter|meters', 1),
      u('mm', 'millimetre|millimetres', 0.001),
      u('cm', '', 0.01),
      u('in', "inch|inches|\"|''", inch),
      u('ft', "foot|feet|'", foot),
      u('yd', 'yard|yards', 0.9144),
    ],
    shown: shown('in', 1 / 16, 'm', 0.001),
  },
  area: {
    unit: 'm²',
    units: [
      u('m²', 'm2|sq m|sqm|qm|m^2|square metres|square meters', 1),
      u('ft²', 'ft2|sq ft|sq. ft.|sqft|sf|ft^2|square feet', foot * foot),
      u('in²', 'in2|sq in|in^2', inch * inch),
      u('cm²', 'cm2', 1e-4),
    ],
    shown: shown('ft²', 0.1, 'm²', 0.01),
  },
  volume: {
    unit: 'm³',
    units: [
      u('m³', 'm3|m^3', 1),
      u('ft³', 'ft3|cu ft|cf', foot ** 3),
      u('L', 'l|litre|litres|liter|liters', 0.001),
      u('gal', 'gallon|gallons', gallon),
    ],
    shown: shown('gal', 0.01, 'm³', 0.0001),
  },
  flow: {
    unit: 'm³/s',
    units: [
      u('m³/s', 'm3/s', 1),
      u('L/s', 'l/s|lps', 0.001),
      u('m³/h', 'm3/h|cmh', 1 / 3600),
      u('cfm', 'ft3/min|CFM', foot ** 3 / 60),
    ],
    shown: shown('cfm', 0.1, 'L/s', 0.1),
  },
  pressure: {
    unit: 'Pa',
    units: [
      u('Pa', 'pa', 1),
      u('inH2O', inchWaterSpellings, inchWater),
      u('kPa', '', 1000),
      u('hPa', 'mbar', 100),
      u('psi', '', 6894.757293168),
    ],
    shown: shown('inH2O', 0.001, 'Pa', 0.1),
  },
  // Between rooms, and between a house and outdoors: gauges are set to pascals for it everywhere.
  'room-pressure': {
    unit: 'Pa',
    units: [u('Pa', 'pa', 1), u('inH2O', inchWaterSpellings, inchWater)],
    shown: shown('Pa', 0.1, 'Pa', 0.1),
  },
  power: {
    unit: 'W',
    units: [
      u('W', 'w|watt|watts', 1),
      u('kW', 'kw', 1000),
      // A rate is often said in Btu alone; nothing else can be meant by it here.
      u('Btu/h', 'BTU/h|Btu/hr|BTU/hr|btu/h|btuh|BTUH|BTU', btuPerHour),
      u('kBtu/h', 'kBTU/h|kBtu/hr|kBTU/hr', 1000 * btuPerHour),
      u('tons', 'ton', 12_000 * btuPerHour),
      u('hp', '', 745.69987158227),
    ],
    shown: shown('Btu/h', 1, 'W', 1),
  },
  'electric-power': {
    unit: 'W',
    units: [u('W', 'w|watt|watts', 1), u('kW', 'kw', 1000), u('hp', '', 745.69987158227)],
    shown: shown('W', 1, 'W', 1),
  },
  energy: {
    unit: 'kWh',
    units: [
      u('kWh', 'kwh|KWH', 1),
      u('MWh', '', 1000),
      u('Wh', 'wh', 0.001),
      u('MJ', '', 1 / 3.6),
      u('GJ', '', 1000 / 3.6),
      u('Btu', 'BTU', btu / 3.6e6),
      u('kBtu', 'kBTU', btu / 3600),
      u('therms', 'therm', (1e5 * btu) / 3.6e6),
    ],
    shown: shown('kWh', 0.1, 'kWh', 0.1),
  },
  mass: {
    unit: 'kg',
    units: [u('kg', '', 1), u('g', '', 0.001), u('lb', 'lbs|pound|pounds', pound), u('oz', '', pound / 16)],
    shown: shown('lb', 0.1, 'kg', 0.1),
  },
  'humidity-ratio': {
    unit: 'kg/kg',
    units: [u('kg/kg', '', 1), u('g/kg', '', 0.001), u('lb/lb', '', 1), u('gr/lb', 'grains/lb', 1 / 7000)],
    shown: shown('gr/lb', 0.1, 'g/kg', 0.01),
  },
  'relative-humidity': { unit: '', units: [u('%', '', 0.01)], shown: shown('%', 0.1, '%', 0.1) },
  fraction: { unit: '', units: [u('%', '', 0.01), u('', '', 1)], shown: shown('%', 0.1, '%', 0.1) },
  conductance: {
    unit: 'W/K',
    units: [u('W/K', '', 1), u('Btu/h°F', 'Btu/h F|Btu/(h F)|Btu/(h°F)|BTU/h°F', btuPerHour / fahrenheit)],
    shown: shown('Btu/h°F', 0.1, 'W/K', 0.1),
  },
  'u-value': {
    unit: 'W/(m²K)',
    units: [
      u('W/(m²K)', 'W/m2K|W/m²K|W/(m2K)|W/m2 K', 1),
      u('Btu/h·ft²·°F', 'Btu/h ft2 F|Btu/(h ft2 F)|BTU/h ft2 F|US', 1 / rUs),
    ],
    shown: shown('Btu/h·ft²·°F', 0.001, 'W/(m²K)', 0.001),
  },
  'r-value': {
    unit: 'm²K/W',
    units: [u('m²K/W', 'm2K/W|RSI', 1), u('h·ft²·°F/Btu', 'h ft2 F/Btu|ft2 F h/Btu|R', rUs)],
    shown: shown('h·ft²·°F/Btu', 0.1, 'm²K/W', 0.01),
  },
  conductivity: {
    unit: 'W/(mK)',
    units: [u('W/(mK)', 'W/mK|W/m K', 1), u('Btu·in/h·ft²·°F', 'Btu in/h ft2 F', inch / rUs)],
    shown: shown('W/(mK)', 0.0001, 'W/(mK)', 0.0001),
  },
  angle: { unit: '°', units: [u('°', 'deg|degrees|degree|º', 1)], shown: shown('°', 0.01, '°', 0.01) },
  time: {
    unit: 's',
    units: [
      u('s', 'sec|seconds', 1),
      u('min', 'minutes|minute', 60),
      u('h', 'hr|hour|hours', 3600),
      u('days', 'day|d', 86_400),
    ],
    shown: shown('min', 0.1, 'min', 0.1),
  },
  'time-of-day': {
    unit: 's',
    units: [u('s', 'sec|seconds', 1), u('min', 'minutes|minute', 60), u('h', 'hr|hour|hours', 3600)],
    shown: shown('h', 1 / 60, 'h', 1 / 60),
  },
  velocity: {
    unit: 'm/s',
    units: [
      u('m/s', '', 1),
      u('fpm', 'ft/min', foot / 60),
      u('mph', '', 0.44704),
      u('km/h', 'kph', 1 / 3.6),
      u('knots', 'kn|kt', 1852 / 3600),
    ],
    shown: shown('fpm', 1, 'm/s', 0.01),
  },
  irradiance: {
    unit: 'W/m²',
    units: [u('W/m²', 'W/m2', 1), u('Btu/h·ft²', 'Btu/h ft2', btuPerHour / foot ** 2)],
    shown: shown('W/m²', 1, 'W/m²', 1),
  },
  'air-changes': {
    unit: '1/h',
    units: [u('air changes/h', '1/h|/h|ach|ACH|ACH50|ach50', 1)],
    shown: shown('air changes/h', 0.01, 'air changes/h', 0.01),
  },
  current: { unit: 'A', units: [u('A', 'amp|amps|a', 1)], shown: shown('A', 0.1, 'A', 0.1) },
  voltage: { unit: 'V', units: [u('V', 'volt|volts|v', 1)], shown: shown('V', 0.1, 'V', 0.1) },
  /** What is lost along wires: volts to a tenth. */
  'voltage-difference': { unit: 'V', units: [u('V', 'volt|volts|v', 1)], shown: shown('V', 0.01, 'V', 0.01) },
  frequency: { unit: 'Hz', units: [u('Hz', 'hz', 1)], shown: shown('Hz', 0.1, 'Hz', 0.1) },
  resistance: {
    unit: 'Ω',
    units: [u('Ω', 'ohm|ohms|R', 1), u('kΩ', 'kohm', 1e3), u('MΩ', 'Mohm|megohm|megohms', 1e6)],
    shown: shown('MΩ', 0.01, 'MΩ', 0.01),
  },
  'wire-size': { unit: 'mm²', units: [u('mm²', 'mm2|sq mm', 1)], shown: shown('mm²', 0.01, 'mm²', 0.01) },
  density: {
    unit: 'kg/m³',
    units: [u('kg/m³', 'kg/m3', 1), u('lb/ft³', 'lb/ft3|pcf', pound / foot ** 3)],
    shown: shown('lb/ft³', 0.01, 'kg/m³', 0.1),
  },
  'specific-heat': {
    unit: 'J/(kgK)',
    units: [u('J/(kgK)', 'J/kgK|J/kg K', 1), u('Btu/lb°F', 'Btu/lb F', btu / pound / fahrenheit)],
    shown: shown('Btu/lb°F', 0.001, 'J/(kgK)', 1),
  },
  'areal-mass': {
    unit: 'kg/m²',
    units: [
      u('kg/m²', 'kg/m2|kg/m^2', 1),
      u('g/m²', 'g/m2|g/m^2', 0.001),
      u('lb/ft²', 'lb/ft2|psf', pound / foot ** 2),
      u('oz/ft²', 'oz/ft2', pound / 16 / foot ** 2),
    ],
    shown: shown('oz/ft²', 0.01, 'g/m²', 1),
  },
  'friction-rate': {
    unit: 'Pa/m',
    units: [u('Pa/m', '', 1), u('inH2O/100 ft', 'in/100 ft|inH2O/100ft', inchWater / (100 * foot))],
    shown: shown('inH2O/100 ft', 0.001, 'Pa/m', 0.01),
  },
  /** Loudness in a room by the noise criterion curves. */
  'noise-criterion': { unit: 'NC', units: [u('NC', 'nc', 1)], shown: shown('NC', 1, 'NC', 1) },
  'sound-level': { unit: 'dB', units: [u('dB', 'db|dBA|dB(A)', 1)], shown: shown('dB', 1, 'dB', 1) },
  'line-charge': {
    unit: 'kg/m',
    units: [u('kg/m', '', 1), u('g/m', '', 0.001), u('oz/ft', '', pound / 16 / foot)],
    shown: shown('oz/ft', 0.01, 'g/m', 1),
  },
  money: { unit: '', units: [u('', '', 1)], shown: shown('', 0.01, '', 0.01) },
  /** What a liquid costs, in the project's money. */
  'price-of-volume': {
    unit: 'a litre',
    units: [
      u('a litre', '/L|per L|per litre|per liter|a liter', 1),
      u('a gallon', '/gal|per gal|per gallon', 0.001 / gallon),
    ],
    shown: shown('a gallon', 0.01, 'a litre', 0.01),
  },
  count: { unit: '', units: [u('', '', 1)], shown: shown('', 1, '', 1) },
  number: { unit: '', units: [u('', '', 1)], shown: shown('', 1e-6, '', 1e-6) },
} as const satisfies Readonly<Record<string, Kind>>;

export type QuantityKind = keyof typeof kinds;

export const kindNames = Object.keys(kinds) as readonly QuantityKind[];

export const kindOf = (kind: QuantityKind): Kind => kinds[kind];

/** The unit printed in a field's box in one system. */
export const unitLabel = (kind: QuantityKind, system: System): string =>
  kind === 'length' && system === 'us' ? 'ft in' : kindOf(kind).shown[system].unit;

export const findUnit = (kind: QuantityKind, written: string): Unit | undefined => {
  const { units } = kindOf(kind);
  return (
    units.find((x) => x.spellings.includes(written)) ??
    units.find((x) => x.spellings.some((s) => s.toLowerCase() === written.toLowerCase()))
  );
};
