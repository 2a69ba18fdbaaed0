// Sources: ASHRAE Fundamentals 2017 ch. 1, tables 1 to 3, as quoted in psychrolib's tests (looked up); its worked examples
// (from memory, figures computed with psychrolib 2.5); IAPWS releases (from memory). See README.md.
import { enthalpy, moistAir, ratioOfPressure, saturationPressure, specificVolume } from '@kneewall/engine/physics';
import { checker } from '../src/checker.ts';
import type { Row } from '../src/row.ts';

const sea = 101_325;
/** °C, kJ/kg of air saturated there, and how near a perfect gas comes to the table's real one. */
const saturated = [
  [-20, -18.542, 0.19],
  [-5, 1.164, 0.05],
  [5, 18.639, 0.19],
  [25, 76.504, 0.77],
  [50, 275.353, 2.75],
] as const;

/** A coil's dry air kg/s, W in all and sensible, kg/h of water; the water leaves as cold as the air does. */
function coil(
  enter: { t: number; rh: number } | { t: number; wetBulb: number },
  flow: number,
  leave: { t: number; rh: number },
  p: number,
) {
  const [a, b] = [moistAir(enter, p), moistAir(leave, p)];
  const mass = flow / a.volume;
  const water = mass * (a.w - b.w);
  return {
    mass,
    total: mass * (a.enthalpy - b.enthalpy) - water * 4.186 * leave.t,
    sensible: mass * (enthalpy(enter.t, b.w) - b.enthalpy),
    water: 3600 * water,
  };
}

/** Two streams of kg/s mixed: °C of the mixture. */
function mixed() {
  const cold = moistAir({ t: 4, wetBulb: 2 }, sea);
  const warm = moistAir({ t: 25, rh: 0.5 }, sea);
  const [m1, m2] = [2 / cold.volume, 6.25 / warm.volume];
  const of = (x: 'w' | 'enthalpy'): number => (m1 * cold[x] + m2 * warm[x]) / (m1 + m2);
  const w = of('w');
  return { w, t: (of('enthalpy') - 2501 * w) / (1.006 + 1.86 * w) };
}

export function handbook(source: string): Row[] {
  const check = checker(source);
  const print = coil({ t: 30, rh: 0.5 }, 5, { t: 10, rh: 1 }, sea);
  const low = coil({ t: 26.667, wetBulb: 19.444 }, 0.38, { t: 13, rh: 0.92 }, sea);
  const high = coil({ t: 25, wetBulb: 17.5 }, 0.3, { t: 12.5, rh: 0.9 }, 83_328.45);
  const { t, w } = mixed();
  return [
    ...saturated.map(([at, h, near]) =>
      check(
        `saturated at ${at} °C`,
        'enthalpy',
        'kJ/kg',
        h,
        near,
        moistAir({ t: at, rh: 1 }, sea).enthalpy,
        'looked up',
      ),
    ),
    check('dry at 25 °C', 'enthalpy', 'kJ/kg', 25.148, 0.0075, enthalpy(25, 0), 'looked up'),
    check('dry at 25 °C', 'volume', 'm³/kg', 0.8443, 0.0008, specificVolume(25, 0, sea), 'looked up'),
    check('30 °C, 0.02', 'enthalpy', 'kJ/kg', 81.316, 0.025, enthalpy(30, 0.02), 'looked up'),
    check('30 °C, 0.02, 500 m', 'volume', 'm³/kg', 0.940855374, 0.0003, specificVolume(30, 0.02, 95_461), 'looked up'),
    check('3169.7 Pa, 500 m', 'w', 'kg/kg', 0.0213603998, 2.2e-8, ratioOfPressure(3169.7, 95_461), 'looked up'),
    check(
      'wet bulb 25 °C at 30 °C',
      'w',
      'kg/kg',
      0.0192281274,
      6e-6,
      moistAir({ t: 30, wetBulb: 25 }, 95_461).w,
      'looked up',
    ),
    check(
      'ice bulb -5 °C at -1 °C',
      'w',
      'kg/kg',
      0.0012039982,
      4e-7,
      moistAir({ t: -1, wetBulb: -5 }, 95_461).w,
      'looked up',
    ),
    check('7 °C, 61 %', 'wet bulb', '°C', 3.92667, 0.004, moistAir({ t: 7, rh: 0.61 }, 100_000).wetBulb, 'looked up'),
    check('over water, 300 K', 'pressure', 'Pa', 3536.58941, 1.06, saturationPressure(26.85), 'from memory'),
    check('over ice, 230 K', 'pressure', 'Pa', 8.94735, 0.009, saturationPressure(-43.15), 'from memory'),
    check('example 3', 'dry air', 'kg/s', 5.70016, 0.006, print.mass),
    check('example 3', 'total', 'kW', 197.73, 0.4, print.total),
    check('example 3', 'water', 'kg/h', 116.56, 0.24, print.water),
    check('example 4', 'dry bulb', '°C', 19.628, 0.02, t),
    check('example 4', 'w', 'kg/kg', 0.00824817, 1e-6, w),
    check('coil at the sea', 'total', 'kW', 8.9805, 0.018, low.total),
    check('coil at the sea', 'sensible', 'kW', 6.1387, 0.0123, low.sensible),
    check('coil at the sea', 'water', 'kg/h', 4.09851, 0.0082, low.water),
    check('coil at 1619 m', 'total', 'kW', 5.29073, 0.0106, high.total),
    check('coil at 1619 m', 'sensible', 'kW', 3.66863, 0.0073, high.sensible),
    check('coil at 1619 m', 'water', 'kg/h', 2.34034, 0.0047, high.water),
  ];
}
