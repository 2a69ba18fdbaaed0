// Source: the form of ASHRAE 152's delivery effectiveness, from memory; its figures computed outside the project. See README.md.
import { type AirModel, ductHeat } from '@kneewall/engine';
import { type Row, row } from '../src/row.ts';

const celsius = (f: number): number => ((f - 32) * 5) / 9;
const cubicMetres = 0.47194745e-3;
const squareMetres = 0.09290304;
const resistance = 0.17611018;
/** W/(m³/s K) of the 1.08 Btu/h of each cfm and °F. */
const heatOfVolume = (1.08 * 0.29307107) / (cubicMetres * (5 / 9));

/** Share of the unit's heat that supply and return in an attic bring to the room: cfm, Btu/h, ft², h ft² °F/Btu, °F. */
type Case = readonly [Q: number, E: number, as: number, ar: number, As: number, Ar: number, R: number, attic: number];
const cases: readonly (readonly [...Case, expected: number])[] = [
  [1000, 40_000, 0.9, 0.95, 270, 100, 6, 30, 0.76841493],
  [800, 30_000, 0.96, 0.98, 200, 60, 8, 20, 0.85806525],
  [1000, 40_000, 1, 1, 0, 0, 6, 30, 1],
];
const room = 68;

function section(side: 'supply' | 'return', surface: number, leakage: number, insulation: number) {
  const plain = {
    diameter: 0.3,
    area: 0.07,
    length: 1,
    roughness: 0,
    frictionFactor: 1,
    lossCoefficient: 0,
    supports: 1,
  };
  return { ...plain, id: side, name: side, side, kind: 'round', surface, leakage, insulation, place: 'attic' } as const;
}
const terminal = (id: string, of: string) =>
  ({ id, name: id, section: of, room: 'room', faceArea: 1, freeArea: 1, resistance: 1 }) as const;

/** Our own ducts in that attic: flows as the case states them, the unit's heat put between return and supply. */
function share([Q, E, as, ar, As, Ar, R, attic]: Case): number {
  const model: AirModel = {
    sections: [
      section('supply', As * squareMetres, 1 - as, R * resistance),
      section('return', Ar * squareMetres, 1 - ar, R * resistance),
    ],
    terminals: [terminal('register', 'supply'), terminal('grille', 'return')],
    filter: { pressure: 0, velocity: 1, exponent: 1, area: 1 },
    added: 0,
    blower: { setting: '', points: [] },
    // Air of 20 °C that holds as much heat as the 1.08 says.
    pressure: (heatOfVolume / 1006) * 287.042 * 293.15,
  };
  const q = Q * cubicMetres;
  const start = Float64Array.of(q, q, q * as, q * ar);
  const at = { indoor: celsius(room), attic: celsius(attic), below: 0, returnTemperature: 20 };
  const { entering } = ductHeat(model, { start }, { ...at, leaving: at.indoor });
  const unit = E * 0.29307107;
  return ductHeat(model, { start }, { ...at, leaving: entering + unit / (q * heatOfVolume) }).delivered / unit;
}

export const deliveredRows = (source: string): Row[] =>
  cases.map(([...given]) => {
    const expected = given[8];
    const name = `${given[0]} cfm, leaks ${given[2]} and ${given[3]}, attic ${given[7]} °F`;
    const known = 'computed' as const;
    const about = { source, case: name, field: 'share delivered', unit: '', expected, tolerance: 0.0005, known };
    return row(about, share(given as unknown as Case));
  });
