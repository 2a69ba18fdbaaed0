// Source: orifice law with 0.6, computed outside the project; blower-door practice from memory. See README.md.
import { type HouseAir, nominalAir, type ShutDoors, shutSolver, solveFlows, withEnough } from '@kneewall/engine';
import { dischargeCoefficient, orificeFlow } from '@kneewall/engine/physics';
import { ductSystem } from '../src/ductSystem.ts';
import { type How, row, type ValidationSource } from '../src/row.ts';

const id = 'doors';
const density = 1.204;
const inch = 0.0254;
const cfm = 0.47194745e-3;

// cfm into the room, square inches open, leak coefficient m³/(s Paⁿ), Pa, tolerance Pa
const doors: readonly (readonly [string, number, number, number, number, number])[] = [
  ['150 cfm, undercut 30 x 0.75 in', 150, 22.5, 0, 39.77, 0.05],
  ['100 cfm, undercut 30 x 0.75 in', 100, 22.5, 0, 17.68, 0.02],
  ['80 cfm, undercut 28 x 1 in', 80, 28, 0, 7.305, 0.01],
  ['150 cfm, undercut 30 x 1.5 in', 150, 45, 0, 9.943, 0.01],
  ['150 cfm, with a transfer grille of 50 in²', 150, 72.5, 0, 3.83, 0.005],
  ['150 cfm, with room leakage instead', 150, 22.5, 0.004, 16.693, 0.02],
];
// Pa and L/s through 0.01 m²
const orifice = [
  [1, 7.7331],
  [4, 15.4662],
  [10, 24.4542],
] as const;

const fieldRule = (): number => (1.07 * cfm * dischargeCoefficient) / orificeFlow(inch * inch, 1, density);

/** A blower that moves just this much, cfm, whatever stands against it, into one room; the hall gives it back. */
function shutIn(flow: number, house: HouseAir): ShutDoors {
  const q = flow * cfm;
  const model = ductSystem({
    points: [
      { flow: q * (1 - 1e-7), pressure: 500 },
      { flow: q * (1 + 1e-7), pressure: 0 },
    ],
    density,
  });
  const open = solveFlows(model, nominalAir);
  return withEnough(shutSolver()(model, nominalAir, open, house), model, nominalAir, open, house);
}

/** Leaks of the hall so wide that it stands at the pressure of outdoors. */
const wideOpen = 1e4;

const houseOf = (area: number, leak: number): HouseAir => ({
  rooms: [{ id: 'room', opening: area * inch * inch, leak }],
  leaks: { open: wideOpen, exponent: 0.65 },
  exhaust: {},
});

const pressure = (flow: number, area: number, leak: number): number =>
  shutIn(flow, houseOf(area, leak)).rooms.room?.pressure ?? Number.NaN;

const enough = (flow: number): number =>
  (shutIn(flow, houseOf(22.5, 0)).rooms.room?.enough ?? Number.NaN) / (inch * inch);

export const source: ValidationSource = {
  id,
  title: 'Openings and shut doors',
  measure: () => [
    ...orifice.map(([dp, expected]) =>
      check(`0.01 m², ${dp} Pa`, 'flow', 'L/s', expected, 1e-5 * expected, orificeFlow(0.01, dp, density) * 1000),
    ),
    check('1 in², 1 Pa', 'flow', 'L/s', 0.49891, 5e-6, orificeFlow(inch * inch, 1, density) * 1000),
    check('1 in², 1 Pa', 'flow', 'cfm', 1.05713, 1e-5, orificeFlow(inch * inch, 1, density) / cfm),
    check('field rule, cfm = 1.07 in² √Pa', 'discharge it implies', '', 0.6073, 0.0005, fieldRule(), 'from memory'),
    // Shut doors are solved by the whole network: blower, ducts, registers, room and hall.
    ...doors.map(([name, flow, area, leak, expected, tolerance]) =>
      check(name, 'pressure', 'Pa', expected, tolerance, pressure(flow, area, leak)),
    ),
    check('150 cfm held at 3 Pa', 'opening', 'in²', 81.92, 0.05, enough(150)),
  ],
};

function check(
  name: string,
  field: string,
  unit: string,
  expected: number,
  tolerance: number,
  ours: number,
  known: How = 'computed',
) {
  return row({ source: id, case: name, field, unit, expected, tolerance, known }, ours);
}
