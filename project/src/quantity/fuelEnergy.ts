import { foot } from './kinds.ts';

/** A measure of a fuel, as it is told back, and the kWh that it holds. */
export type FuelMeant = { readonly words: string; readonly factor: number };

const btu = 1055.05585262 / 3.6e6;
const gallon = 3.785411784e-3;
const pound = 0.45359237;
/** 4 ft by 4 ft by 8 ft of stacked wood, air between the pieces counted. NIST Handbook 130. */
const cord = 128 * foot ** 3;

// Measures by how they are written, m³ and kg: exact by definition (NIST SP 811; a US ton is 2000 lb).
const volumes: Readonly<Record<string, readonly [string, number]>> = {
  gal: ['gallon|gallons|US gal|US gallons', gallon],
  L: ['litre|litres|liter|liters', 0.001],
};
const gasVolumes: typeof volumes = {
  ccf: ['hundred cubic feet', 100 * foot ** 3],
  Mcf: ['thousand cubic feet', 1000 * foot ** 3],
  'ft³': ['ft3|cu ft|cf|cubic feet', foot ** 3],
  'm³': ['m3|cubic metres|cubic meters', 1],
};
const woodVolumes: typeof volumes = {
  cords: ['cord|full cords|full cord', cord],
  'm³': ['m3|steres|stere|cubic metres|cubic meters', 1],
};
const masses: typeof volumes = {
  lb: ['lbs|pound|pounds', pound],
  kg: ['', 1],
  'US tons': ['US ton|short tons|short ton|ton|tons', 2000 * pound],
  tonnes: ['tonne|t|metric tons|metric ton|ton|tons', 1000],
};

/**
 * Fuels by their names, and the kWh in a m³ or kg of them. Oil, propane, gas and a cord: the conversion factors of the US Energy
 * Information Administration (“British thermal units”, averages of 2019, the cord an estimate that takes no account of
 * species or moisture). Propane's weight of 4.2 lb/gal, and what pellets hold at the least by ISO 17225-2 (16.5 MJ/kg): from memory.
 */
const fuels = [
  { names: 'oil|heating oil|fuel oil', of: volumes, holds: (138_500 * btu) / gallon },
  { names: 'propane', of: volumes, holds: (91_452 * btu) / gallon },
  { names: 'propane', of: { lb: masses.lb, kg: masses.kg }, holds: (91_452 * btu) / (4.2 * pound) },
  { names: 'gas|natural gas', of: gasVolumes, holds: (1037 * btu) / foot ** 3 },
  { names: 'wood|firewood|stacked wood', of: woodVolumes, holds: (20e6 * btu) / cord },
  { names: 'pellets|wood pellets', of: masses, holds: 16.5 / 3.6 },
] as const;

/** Every measure of fuel by how it may be written, in small letters: with its fuel, or without. */
const meant: ReadonlyMap<string, readonly FuelMeant[]> = (() => {
  const all = new Map<string, FuelMeant[]>();
  for (const { names, of, holds } of fuels)
    for (const [symbol, measure] of Object.entries(of)) {
      const [spellings = '', size = 0] = measure ?? [];
      const [fuel = ''] = names.split('|');
      const one = { words: `${symbol} of ${fuel}`, factor: size * holds };
      const named = [symbol, ...spellings.split('|')].filter((x) => x !== '');
      for (const written of named)
        for (const text of [written, ...names.split('|').flatMap((n) => [`${written} of ${n}`, `${written} ${n}`])])
          all.set(text.toLowerCase(), [...(all.get(text.toLowerCase()) ?? []), one]);
    }
  return all;
})();

/** What a measure of fuel may mean as energy: `cords` one thing, `gal` oil or propane. None where it is no such measure. */
export const fuelsMeant = (written: string): readonly FuelMeant[] =>
  meant.get(written.toLowerCase().replaceAll(/\s+/g, ' ').trim()) ?? [];
