// Sources: the affinity laws, and a closed form for a parabola fan on a parabola system (computed). See README.md.
import { compileFan, compileNetwork, fanPressure, operatingPoints, solveNetwork } from '@kneewall/engine/physics';
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
  ],
};
