// Source: computed least squares, change points, conversions of a blower door, and a normal update. See README.md.
import {
  changePoint,
  coefficientHalfWidth,
  leakageArea,
  leakageCoefficient,
  leastSquares,
  normalUpdate,
  predict,
} from '@kneewall/engine/physics';
import { checker } from '../src/checker.ts';
import type { Row, ValidationSource } from '../src/row.ts';

const id = 'logs';
const check = checker(id);

const days = {
  outdoor: [-8, -5, -3, 0, 2, 4, 6, 8, 10, 12],
  heat: [4.42, 4.02, 3.66, 3.23, 2.87, 2.52, 2.31, 1.88, 1.63, 1.25],
};

function loss(): Row[] {
  const apart = days.outdoor.map((t) => 20 - t);
  const fit = leastSquares([apart, apart.map(() => 1)], days.heat);
  const name = 'heat of ten days by degrees apart';
  const [slope, intercept] = fit?.coefficients ?? [];
  const [slopeError, interceptError] = fit?.standardErrors ?? [];
  const half = fit ? coefficientHalfWidth(fit, 0, 0.95) : Number.NaN;
  return [
    check(name, 'slope', 'kW/K', 0.15890974, 1e-7, slope),
    check(name, 'intercept', 'kW', 0.01397059, 1e-7, intercept),
    check(name, 'residual deviation', 'kW', 0.04269249, 1e-7, fit?.deviation),
    check(name, 'error of the slope', 'kW/K', 0.00214973, 1e-7, slopeError),
    check(name, 'error of the intercept', 'kW', 0.03976701, 1e-7, interceptError),
    check(name, 'R²', '', 0.99853809, 1e-7, fit?.r2),
    check(name, '95 % from', 'kW/K', 0.15395246, 1e-6, (slope ?? Number.NaN) - half),
    check(name, '95 % to', 'kW/K', 0.16386701, 1e-6, (slope ?? Number.NaN) + half),
    check(name, 'at -15 °C', 'kW', 5.57581136, 1e-6, fit && predict(fit, [35, 1]).value),
  ];
}

const t = [-6, -2, 1, 4, 7, 10, 13, 15, 17, 19, 21, 23];
const measured = [58.2, 48.9, 43.6, 36.1, 30.2, 23.8, 16.9, 13.2, 12.1, 11.8, 12.3, 11.9];
const noiseless = [57.15, 48.75, 42.45, 36.15, 29.85, 23.55, 17.25, 13.05, 12, 12, 12, 12];

function points(): Row[] {
  const found = changePoint(t, measured);
  const exact = changePoint(t, noiseless);
  return [
    check('change point', 'base', 'kWh/d', 12.025, 1e-4, found?.base),
    check('change point', 'slope', 'kWh/(d K)', 2.14525692, 1e-4, found?.slope),
    check('change point', 'point', '°C', 15.42943, 1e-4, found?.point),
    check('change point', 'sum of squares', '', 1.23896245, 1e-6, found?.sum),
    check('change point without noise', 'base', 'kWh/d', 12, 1e-6, exact?.base),
    check('change point without noise', 'slope', 'kWh/(d K)', 2.1, 1e-6, exact?.slope),
    check('change point without noise', 'point', '°C', 15.5, 1e-6, exact?.point),
  ];
}

/** Air changes at 50 Pa and leakage area at 4 Pa, cubic feet, 1.204 kg/m³. */
function doors(): Row[] {
  return (
    [
      [1500, 15_000, 6, 531.8],
      [850, 8350, 6.1078, 301.36],
    ] as const
  ).flatMap(([flow, volume, changes, area]) => {
    const name = `${flow} cfm at 50 Pa, ${volume} ft³`;
    const c = leakageCoefficient((60 * flow) / volume, volume * 0.3048 ** 3, 0.65);
    return [
      check(name, 'air changes', '1/h', changes, 1e-3 * changes, (60 * flow) / volume),
      check(name, 'leakage area', 'cm²', area, 1e-3 * area, 1e4 * leakageArea(c, 0.65, 1.204)),
    ];
  });
}

function update(): Row[] {
  const after = normalUpdate({ mean: 150, deviation: 30 }, { mean: 180, deviation: 20 });
  return [
    check('150 ± 30 and a reading of 180 ± 20', 'mean', 'W/K', 170.769231, 1e-6, after.mean),
    check('150 ± 30 and a reading of 180 ± 20', 'deviation', 'W/K', 16.641006, 1e-6, after.deviation),
  ];
}

/** A duct leakage test at five pressures, Pa and cfm: flow by a power of pressure, by least squares of logarithms. */
function leaks(): Row[] {
  const pressures = [10, 17.5, 25, 37.5, 50];
  const name = 'duct leakage at five pressures';
  const fitOf = (flows: readonly number[]) => {
    const fit = leastSquares([pressures.map(Math.log), pressures.map(() => 1)], flows.map(Math.log));
    const [n = Number.NaN, ln = Number.NaN] = fit?.coefficients ?? [];
    return { fit, n, c: Math.exp(ln), at: (p: number) => Math.exp(ln) * p ** n };
  };
  const { fit, n, c, at } = fitOf([50.6, 70.1, 89.2, 112.0, 136.5]);
  const exact = fitOf(pressures.map((p) => 12 * p ** 0.62));
  return [
    check(name, 'exponent', '', 0.614857, 1e-5, n),
    check(name, 'coefficient', 'cfm/Paⁿ', 12.209408, 1e-5, c),
    check(name, 'flow at 25 Pa', 'cfm', 88.3544, 1e-4, at(25)),
    check(name, 'error of the exponent', '', 0.010175, 1e-5, fit?.standardErrors[0]),
    check(name, 'R²', '', 0.999179, 1e-5, fit?.r2),
    check('duct leakage without scatter', 'exponent', '', 0.62, 1e-9, exact.n),
    check('duct leakage without scatter', 'flow at 37.5 Pa', 'cfm', 113.522, 1e-3, exact.at(37.5)),
  ];
}

export const source: ValidationSource = {
  id,
  title: 'What logs and readings teach: regression, change points, a normal update',
  measure: () => [...loss(), ...points(), ...doors(), ...update(), ...leaks()],
};
