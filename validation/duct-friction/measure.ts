// Sources: Colebrook (computed), a published duct example and the fluids library's tests (looked up). See README.md.
import { equivalentRound, frictionFactor, straightDrop } from '@kneewall/engine/physics';
import { type Row, row, type ValidationSource } from '../src/row.ts';
import truth from './truth.json' with { type: 'json' };

const source_ = 'duct-friction';
const standard = { density: 1.204, viscosity: 1.825e-5 };
const inch = 0.0254;
const cfm = 0.47194745e-3;
const inPerHundredFeet = 249.08891 / 30.48;

const colebrook = (): Row[] =>
  truth.colebrook.flatMap(([re = 0, ...factors]) =>
    factors.map((expected, i) =>
      row(
        {
          source: source_,
          case: `Re ${re}, roughness ${truth.roughness[i]}`,
          field: 'friction factor',
          unit: '',
          expected,
          tolerance: 1e-9 * expected,
          known: 'computed',
        },
        frictionFactor(re, truth.roughness[i] ?? 0),
      ),
    ),
  );

const drop = (diameter: number, flow: number, roughness: number): number =>
  straightDrop(
    { length: 1, diameter: diameter * inch, area: (Math.PI * (diameter * inch) ** 2) / 4, roughness },
    flow,
    standard,
  );

/** The printed flow, at which our rate has to be the chart's: 0.2 % of flow is 0.4 % of pressure. */
const chart = (): Row[] =>
  truth.flowAtRate.flatMap(([d = 0, litres = 0, boardLitres = 0, roughLitres = 0]) =>
    (
      [
        [litres, 0.00009],
        [boardLitres, 0.0009],
        [roughLitres, 0.003],
      ] as const
    ).map(([q, e]) =>
      row(
        {
          source: source_,
          case: `${d} in, roughness ${e * 1000} mm, ${q} L/s`,
          field: 'rate',
          unit: 'Pa/m',
          expected: 0.1 * inPerHundredFeet,
          tolerance: 0.004 * 0.1 * inPerHundredFeet,
          known: 'computed',
        },
        drop(d, q / 1000, e),
      ),
    ),
  );

const rates = (): Row[] =>
  truth.rateAtFlow.flatMap(([d = 0, q = 0, smooth = 0, rough = 0]) =>
    (
      [
        [smooth, 0.00009],
        [rough, 0.003],
      ] as const
    ).map(([expected, e]) =>
      row(
        {
          source: source_,
          case: `${d} in at ${q} cfm, roughness ${e * 1000} mm`,
          field: 'rate',
          unit: 'Pa/m',
          expected,
          tolerance: 0.001 * expected,
          known: 'computed',
        },
        drop(d, q * cfm, e),
      ),
    ),
  );

const shapes = (): Row[] =>
  truth.equivalentRound.map(([a = 0, b = 0, expected = 0]) =>
    row(
      {
        source: source_,
        case: `${a} x ${b} in`,
        field: 'equivalent round',
        unit: 'in',
        expected,
        tolerance: 0.001,
        known: 'computed',
      },
      equivalentRound(a, b),
    ),
  );

const published = (): Row[] => [
  row(
    {
      source: source_,
      case: 'Re 1.048e11, roughness 2.55e-8',
      field: 'friction factor',
      unit: '',
      expected: 0.0037751087365339906,
      tolerance: 1e-10 * 0.0037751,
      known: 'looked up',
    },
    frictionFactor(1.048e11, 2.55e-8),
  ),
  row(
    {
      source: source_,
      case: 'laminar, Re 2000',
      field: 'friction factor',
      unit: '',
      expected: 0.032,
      tolerance: 1e-15,
      known: 'computed',
    },
    frictionFactor(2000, 1e-3),
  ),
  row(
    {
      source: source_,
      case: '350 x 200 mm',
      field: 'equivalent round',
      unit: 'mm',
      expected: 286.4,
      tolerance: 0.1,
      known: 'looked up',
    },
    equivalentRound(350, 200),
  ),
];

export const source: ValidationSource = {
  id: source_,
  title: 'Friction in ducts: Colebrook and the friction chart',
  measure: () => [...colebrook(), ...chart(), ...rates(), ...shapes(), ...published()],
};
