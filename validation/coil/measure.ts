// Sources: psychrolib for states (computed); the bypass-factor method (from memory, numbers computed); 10 CFR 430 appendix M (from memory).
import {
  apparatusDewPoint,
  bypassAt,
  bypassFactor,
  coilOf,
  coilOutput,
  defrostLoss,
  heatGivenUp,
  transferUnits,
} from '@kneewall/engine';
import { dewPoint, humidityRatio, saturationRatio } from '@kneewall/engine/physics';
import { type How, type Row, row, type ValidationSource } from '../src/row.ts';
import { measureCase } from './caseFile.ts';

const id = 'coil';
const near = (
  name: string,
  field: string,
  unit: string,
  [expected, tolerance]: readonly [number, number],
  ours: number,
  known: How = 'computed',
): Row => row({ source: id, case: name, field, unit, expected, tolerance, known }, ours);

/** °C, Pa, kg/kg: entering air by dry and wet bulb, leaving air by dry bulb and humidity. */
const coils = [
  {
    name: '26.667/19.444 °C, sea level',
    air: { t1: 26.667, wb: 19.444, t2: 13, rh: 0.92, p: 101_325 },
    states: { w1: 0.0111652, w2: 0.0085749, wAdp: 0.0082127 },
    adp: 11.08925,
    bypass: 0.122659,
    share: 0.678871,
  },
  {
    name: '25/17.5 °C, 1619 m',
    air: { t1: 25, wb: 17.5, t2: 12.5, rh: 0.9, p: 83_328.45 },
    states: { w1: 0.0121609, w2: 0.0098918, wAdp: 0.0094918 },
    adp: 10.29647,
    bypass: 0.149864,
    share: 0.688977,
  },
  {
    name: '26.7/19.4 °C, sea level',
    air: { t1: 26.7, wb: 19.4, t2: 14.5, rh: 0.9, p: 101_325 },
    states: { w1: 0.0110938, w2: 0.0092581, wAdp: 0.0089339 },
    adp: 12.34546,
    bypass: 0.150095,
    share: 0.727224,
  },
] as const;

const points = (): Row[] =>
  coils.flatMap(({ name, air, states, adp, bypass, share }) => {
    const entering = { t: air.t1, w: humidityRatio({ t: air.t1, wetBulb: air.wb }, air.p) };
    const leaving = { t: air.t2, w: humidityRatio({ t: air.t2, rh: air.rh }, air.p) };
    const ours = apparatusDewPoint(entering, leaving, air.p);
    const { sensible, latent } = heatGivenUp(entering, leaving, 1);
    return [
      near(name, 'humidity entering', 'kg/kg', [states.w1, 2e-5], entering.w),
      near(name, 'humidity leaving', 'kg/kg', [states.w2, 2e-5], leaving.w),
      near(name, 'apparatus dew point', '°C', [adp, 0.02], ours),
      near(name, 'humidity at the surface', 'kg/kg', [states.wAdp, 2e-5], saturationRatio(ours, air.p)),
      near(name, 'bypass factor', '', [bypass, 0.002], bypassFactor(air.t1, air.t2, ours)),
      near(name, 'sensible share', '', [share, 0.002], sensible / (sensible + latent)),
    ];
  });

const rated = { bypass: 0.122659, massFlow: 0.439512 };
const flows = (): Row[] => {
  const units = transferUnits(rated.bypass);
  const conductance = units * rated.massFlow;
  const at = (share: number, ntu: number, bypass: number): Row[] => {
    const ours = bypassAt(conductance, share * rated.massFlow);
    const name = `${Math.round(share * 100)} % of the flow`;
    return [
      near(name, 'transfer units', '', [ntu, 1e-5], transferUnits(ours)),
      near(name, 'bypass factor', '', [bypass, 1e-5], ours),
    ];
  };
  return [...at(1, 2.098347, 0.122659), ...at(0.8, 2.622934, 0.07259), ...at(1.2, 1.748623, 0.174013)];
};

/** An invented row; air so dry that its dew point lies below the coil's surface. */
function dry(): Row[] {
  const sheet = { mode: 'cooling', speed: 'most', outdoor: 35, indoor: 26.7, indoorWetBulb: 19.4 } as const;
  const coil = coilOf({
    ...sheet,
    capacity: 7000,
    power: 2000,
    airflow: 0.33,
    sensibleShare: 0.74,
    defrostCounted: false,
  });
  const entering = { t: 26.7, w: 0.0066 };
  const flow = 0.33;
  const ours = coil && coilOutput(coil, { entering, flow, pressure: 101_325, capacity: 7000, slope: 0.03 });
  if (!ours || !coil) throw new Error('the invented coil has to be within its reach');
  const name = 'entering dew point below the surface';
  const massFlow = flow / (0.287042 * 299.85 * (1 + 1.607858 * entering.w) * (1000 / 101_325));
  const line = massFlow * (1006 + 1860 * entering.w) * (1 - ours.bypass) * (entering.t - ours.surface);
  return [
    near(name, 'sensible share', '', [1, 0], ours.sensible / (ours.sensible + ours.latent)),
    near(name, 'capacity on the dry line', 'W', [line, 1e-6 * line], ours.sensible),
    row(
      {
        source: id,
        case: name,
        field: 'surface above the dew point',
        unit: 'K',
        low: 0,
        high: 20,
        tolerance: 0,
        known: 'computed',
      },
      ours.surface - dewPoint(entering.w, 101_325),
    ),
  ];
}

const celsius = (f: number): number => ((f - 32) * 5) / 9;
const frost = (): Row[] =>
  (
    [
      [35, 0.1],
      [17, 0],
      [45, 0],
      [62, 0],
    ] as const
  ).map(([f, expected]) =>
    near(`frost at ${f} °F`, 'capacity lost', '', [expected, 1e-3], defrostLoss(celsius(f), 0.1), 'from memory'),
  );

export const source: ValidationSource = {
  id,
  title: 'Cooling coil, and frost on the outdoor coil',
  measure: () => [...points(), ...flows(), ...dry(), ...frost()],
  measureCase,
};
