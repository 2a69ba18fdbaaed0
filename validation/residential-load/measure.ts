// Source: a house worked by hand, a steady attic and its vents; computed outside the project. See README.md.
import { evaluate } from '@kneewall/engine';
import { solAirRise, stackVentFlow, steadyAttic, windVentFlow } from '@kneewall/engine/physics';
import { checkProject } from '@kneewall/project';
import { type Row, row, type ValidationSource } from '../src/row.ts';
import { houses } from './houses.ts';

const id = 'residential-load';
const is = (value: number) => ({ value, known: 'measured' as const });
const surface = (kind: string, area: number, assembly: string) => ({
  room: 'all',
  kind,
  other: 'outdoors',
  area: is(area),
  azimuth: is(0),
  assembly,
});

/** The house of the hand calculation, as far as it is checked here; invented. */
const handHouse = {
  schema: 1,
  site: { latitude: is(45), elevation: is(800), coldNight: is(-18), hotAfternoon: is(34) },
  house: {
    setpoints: { heating: is(21), cooling: is(24) },
    rooms: { all: { floorArea: is(95), height: is(2.4) } },
    assemblies: { wall: { uValue: is(0.493936) }, ceiling: { uValue: is(0.24564) } },
    surfaces: { wall: surface('wall', 93.6, 'wall'), ceiling: surface('roof', 95, 'ceiling') },
    openings: {
      windows: { surface: 'wall', glazing: 'double', uValue: is(2.8), width: is(6), height: is(2) },
      door: { surface: 'wall', glazing: 'door', uValue: is(2), width: is(1), height: is(2) },
    },
  },
};

function houseByHand(): Row[] {
  const opened = checkProject(handHouse);
  if (!opened.ok) throw new Error('assert: the house by hand is a valid project');
  const { loads } = evaluate(opened.project, {}).plan.trades;
  const heat = (part: string) => loads?.heatingParts.find((p) => p.part === part)?.heat ?? Number.NaN;
  const difference = 39;
  const say = (part: string, conductance: number) =>
    row(
      {
        source: id,
        case: 'house by hand',
        field: part,
        unit: 'W',
        expected: conductance * difference,
        tolerance: 1e-4 * conductance * difference,
        known: 'computed',
      },
      heat(part),
    );
  const sum = (loads?.heatingParts ?? []).reduce((a, p) => a + p.heat, 0);
  const whole = loads?.heating.ok ? loads.heating.value.likely : Number.NaN;
  return [
    say('walls', 39.3173),
    say('windows', 33.6),
    say('doors', 4),
    say('roof', 23.3358),
    row(
      {
        source: id,
        case: 'house by hand',
        field: 'parts less whole',
        unit: 'W',
        expected: 0,
        tolerance: 1e-8,
        known: 'computed',
      },
      sum - whole,
    ),
  ];
}

/** Ceiling 95 m² U 0.24564, roof 109.6966 m² U 2.5, 130 m³, 33 °C outside, 24 inside, 950 W/m², film 22.7, sky 3.9 K. */
const attics = [
  [0.92, 21.8693, 62.0482],
  [0.92, 131.2159, 54.6406],
  [0.92, 437.3864, 45.6256],
  [0.3, 131.2159, 38.0457],
] as const;

const attic = (): Row[] =>
  attics.map(([absorptance, vents, expected]) => {
    const roof = 33 + solAirRise(absorptance, 950, 22.7, 3.9);
    const ours = steadyAttic(
      { ceiling: 95 * 0.24564, roof: 109.6966 * 2.5, vents },
      { rooms: 24, roof, air: 33, ducts: 0 },
    );
    return row(
      {
        source: id,
        case: `attic, absorptance ${absorptance}, vents ${vents} W/K`,
        field: 'temperature',
        unit: '°C',
        expected,
        tolerance: 1e-3,
        known: 'computed',
      },
      ours,
    );
  });

const vents = (): Row[] => [
  row(
    {
      source: id,
      case: 'vents 0.16 m² each, 1.5 m, 20 K',
      field: 'stack flow',
      unit: 'm³/s',
      expected: 0.0911766,
      tolerance: 1e-5,
      known: 'computed',
    },
    stackVentFlow(0.16, 1.5, 20, 33),
  ),
  row(
    {
      source: id,
      case: 'vents 0.16 m² each, 3 m/s',
      field: 'wind flow',
      unit: 'm³/s',
      expected: 0.1931963,
      tolerance: 1e-6,
      known: 'computed',
    },
    windVentFlow(0.16, 3, 0.9),
  ),
];

export const source: ValidationSource = {
  id,
  title: 'A house and its attic by hand',
  measure: () => [...houseByHand(), ...attic(), ...vents(), ...houses()],
};
