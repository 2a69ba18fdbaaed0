// Sources: the affinity laws, and a closed form for a parabola fan on a parabola system (computed). See README.md.
import { heldAirflow, nominalAir, solveFlows } from '@kneewall/engine';
import { compileFan, compileNetwork, fanPressure, operatingPoints, solveNetwork } from '@kneewall/engine/physics';
import { ductSystem } from '../src/ductSystem.ts';
import { type Row, row, type ValidationSource } from '../src/row.ts';

const id = 'fan-laws';
/** p = 230 + 0.06 Q - 0.0008 Q², Pa and L/s; invented. Points so dense that the curve through them is the parabola. */
const points = (speed: number) =>
  Array.from({ length: 1201 }, (_, i) => {
    const q = i / 2;
    return { flow: (q * speed) / 1000, pressure: speed ** 2 * (230 + 0.06 * q - 0.0008 * q * q) };
  });

function operate(k: number, speed: number): number {
  const curve = compileFan(points(speed));
  const [q = 0] = operatingPoints(curve, (flow) => k * (flow * 1000) ** 2, 50);
  return q * 1000;
}

const onSystem = (k: number, flow: number, speed = 1): Row[] => {
  const ours = operate(k, speed);
  return [
    row(
      {
        source: id,
        case: `system ${k}, speed ${speed}`,
        field: 'flow',
        unit: 'L/s',
        expected: flow,
        tolerance: 2e-6 * flow,
        known: 'computed',
      },
      ours,
    ),
  ];
};

/** The same operating point through the network solver. */
function inNetwork(): Row {
  const links = [
    { id: 'fan', kind: 'fan' as const, from: 'room', to: 'plenum', points: points(1).filter((_, i) => i >= 200) },
    { id: 'system', kind: 'power' as const, from: 'plenum', to: 'room', coefficient: 0.001 * 1e6, exponent: 2 },
  ];
  const solved = solveNetwork(compileNetwork({ nodes: [{ id: 'room', pressure: 0 }, { id: 'plenum' }], links }));
  return row(
    {
      source: id,
      case: 'system 0.001, network',
      field: 'flow',
      unit: 'L/s',
      expected: 374.515176,
      tolerance: 2e-6 * 374.5,
      known: 'computed',
    },
    (solved.flows[0] ?? 0) * 1000,
  );
}

const density = 1.204;
type Points = Parameters<typeof ductSystem>[0]['points'];

/** The whole duct network with these blower points on a system p = k Q², Pa and L/s: L/s and Pa across the unit. */
function wholeNetwork(k: number, blower: Points) {
  // Filter and additions of none still take a thousandth of a pascal each at the most the blower moves.
  const most = blower.at(-1)?.flow ?? 1;
  const { flow, staticPressure } = solveFlows(
    ductSystem({ points: blower, density, resistance: (k * 1e6 - 2e-3 / most ** 2) / 2 }),
    nominalAir,
  );
  return { flow: flow * 1000, pressure: staticPressure };
}

/** Fixed speed and constant torque are their tables; from where the parabola falls. */
const table = (speed: number): Points => points(speed).filter((_, i) => i >= 80);

const ofTable = (k: number, flow: number, pressure: number, speed = 1): Row[] => {
  const ours = wholeNetwork(k, table(speed));
  const name = `system ${k}, speed ${speed}, whole duct network`;
  return [
    check(name, 'flow', 'L/s', flow, 2e-6 * flow, ours.flow),
    check(name, 'pressure', 'Pa', pressure, 4e-6 * pressure, ours.pressure),
  ];
};

/** Invented: holds 350 L/s to 150 Pa, then falls through 320 L/s at 163.84 Pa, which is a point of system 0.0016. */
const held = heldAirflow(
  [
    { flow: 0.35, pressure: 50 },
    { flow: 0.35, pressure: 150 },
    { flow: 0.32, pressure: 163.84 },
    { flow: 0.2, pressure: 185 },
  ],
  undefined,
);

/** A blower that holds its airflow: pressure follows the system at the set flow; past its limit the table. */
const ofHeld = (k: number, flow: number): Row[] => {
  const ours = wholeNetwork(k, held);
  const name = `system ${k}, constant airflow`;
  // Held flow is known to the few parts in ten thousand by which its curve leans.
  const pressure = k * flow * flow;
  return [
    check(name, 'flow', 'L/s', flow, 4e-4 * flow, ours.flow),
    check(name, 'pressure', 'Pa', pressure, 8e-4 * pressure, ours.pressure),
  ];
};

function check(name: string, field: string, unit: string, expected: number, tolerance: number, ours: number): Row {
  return row({ source: id, case: name, field, unit, expected, tolerance, known: 'computed' }, ours);
}

export const source: ValidationSource = {
  id,
  title: 'Fans: affinity laws and operating points',
  measure: () => [
    ...onSystem(0.0006, 427.316361),
    ...onSystem(0.001, 374.515176),
    ...onSystem(0.0016, 322.321857),
    ...onSystem(0.001, 299.612141, 0.8),
    row(
      {
        source: id,
        case: 'system 0.001',
        field: 'pressure',
        unit: 'Pa',
        expected: 140.261617,
        tolerance: 1e-3,
        known: 'computed',
      },
      fanPressure(compileFan(points(1)), 0.374515176),
    ),
    inNetwork(),
    ...ofTable(0.0006, 427.316361, 109.559564),
    ...ofTable(0.001, 374.515176, 140.261617),
    ...ofTable(0.0016, 322.321857, 166.226208),
    ...ofTable(0.001, 299.612141, 89.767435, 0.8),
    ...ofHeld(0.0006, 350),
    ...ofHeld(0.001, 350),
    ...ofHeld(0.0016, 320),
  ],
};
