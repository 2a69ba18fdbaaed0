// Sources: standard atmosphere (computed); ASHRAE air density by altitude, and the heat factors of standard air (from memory).
import { heatGivenUp, standardAir } from '@kneewall/engine';
import { heatOfVapour, standardPressure } from '@kneewall/engine/physics';
import { type How, type Row, row, type ValidationSource } from '../src/row.ts';

const id = 'thin-air';
const near = (
  name: string,
  field: string,
  unit: string,
  [expected, tolerance]: readonly [number, number],
  ours: number,
  known: How,
): Row => row({ source: id, case: name, field, unit, expected, tolerance, known }, ours);

const factor = (metres: number): number => standardPressure(metres) / standardPressure(0);
const metres = [0.94212, 0.88699, 0.8345, 0.78456, 0.73706, 0.69192] as const;
const feet = [0.964, 0.93, 0.896, 0.864, 0.832, 0.801, 0.772, 0.743] as const;

const density = (): Row[] => [
  ...metres.map((x, i) =>
    near(`${(i + 1) * 500} m`, 'density factor', '', [x, 1e-4], factor((i + 1) * 500), 'computed'),
  ),
  ...feet.map((x, i) =>
    near(`${(i + 1) * 1000} ft`, 'density factor', '', [x, 1e-3], factor((i + 1) * 304.8), 'from memory'),
  ),
];

/** Standard air with 10 g of water to the kilogram, one litre a second. */
function factors(): Row[] {
  const flow = standardAir / 1000;
  const sensible = heatGivenUp({ t: 21, w: 0.01 }, { t: 20, w: 0.01 }, flow).sensible;
  const latent = flow * heatOfVapour;
  const total = flow * 1000;
  const name = 'standard air';
  const known = 'from memory';
  const cfm = 0.3048 ** 3 / 60 / 0.001;
  const btu = 3600 / 1055.05585262;
  return [
    near(name, 'sensible factor', 'W/(L/s K)', [1.23, 0.0123], sensible, known),
    near(name, 'total factor', 'W/(L/s kJ/kg)', [1.2, 0.012], total, known),
    near(name, 'latent factor', 'W/(L/s kg/kg)', [3010, 30.1], latent, known),
    near(name, 'sensible factor', 'Btu/h cfm °F', [1.1, 0.022], (sensible * cfm * btu) / 1.8, known),
    near(name, 'total factor', 'Btu/h cfm Btu/lb', [4.5, 0.09], total * cfm * btu * 2.326, known),
    near(name, 'latent factor', 'Btu/h cfm lb/lb', [4840, 96.8], latent * cfm * btu, known),
  ];
}

export const source: ValidationSource = {
  id,
  title: 'Air at altitude, and what a flow of it carries',
  measure: () => [...density(), ...factors()],
};
