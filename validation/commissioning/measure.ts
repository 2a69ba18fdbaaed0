// Source: arithmetic computed outside the project, a bag test's printed calibration, and a study of planted faults. See README.md.
import { entropy, expectedGain, leakAt, normalPosterior, posterior } from '@kneewall/engine/physics';
import { bagError, bagFlow, flowFromHeat, splitFromDuty } from '@kneewall/engine/readings';
import { checker } from '../src/checker.ts';
import type { Row, ValidationSource } from '../src/row.ts';

const id = 'commissioning';
const check = checker(id);

const cfm = 0.3048 ** 3 / 60;
const btuPerHour = 0.29307107;
/** kg/m³ of standard air. */
const standard = 1.204;

/** The trade's 1.08 stands for 1.0827: half a per cent covers it. */
const loose = 0.005;

const heatRows = (): Row[] => [
  check(
    '9.6 kW, rise of 28 °F',
    'flow',
    'cfm',
    1083.2,
    1083.2 * loose,
    (flowFromHeat(9600, 28 / 1.8, standard) ?? 0) / cfm,
  ),
  check('9.6 kW, rise of 28 °F', 'flow', 'L/s', 509.5, 0.1, 1000 * (flowFromHeat(9600, 28 / 1.8, standard) ?? 0)),
  ...(
    [
      [24_000, 0.75, 800, 1, 20.83],
      [24_000, 0.75, 600, 1, 27.78],
      [36_000, 0.7, 1200, 1, 19.44],
      [24_000, 0.75, 800, 0.7846, 26.55],
    ] as const
  ).map(([duty, share, flow, thin, split]) =>
    check(
      `${duty} Btu/h, ${share} sensible, ${flow} cfm, air × ${thin}`,
      'split',
      '°F',
      split,
      split * loose,
      1.8 * splitFromDuty(duty * btuPerHour * share, flow * cfm, standard * thin),
    ),
  ),
];

const bagRows = (): Row[] => [
  ...(
    [
      [2, 75],
      [4, 40],
      [10, 20],
    ] as const
  ).map(([seconds, flow]) =>
    check(`bag of 66 by 91 cm, ${seconds} s`, 'flow', 'cfm', flow, 0.01, (bagFlow(seconds) ?? 0) / cfm, 'looked up'),
  ),
  ...(
    [
      [2, 13.5],
      [4, 8],
    ] as const
  ).map(([seconds, error]) =>
    check(`volume 5 %, time 0.25 s, ${seconds} s`, 'error', '%', error, 0.05, 100 * bagError(0.05, 0.25, seconds)),
  ),
  check('volume 5 %, time 0.25 s, 8 s', 'error', '%', 5.9, 0.05, 100 * bagError(0.05, 0.25, 8)),
];

const leakRows = (): Row[] => [check('95 cfm at 18 Pa, to 25 Pa', 'leak', 'cfm', 117.61, 0.01, leakAt(95, 18, 25))];

// Causes: dirty filter, small return, low charge, return leak, none. Chances invented, results computed.
const prior = [0.3, 0.25, 0.15, 0.15, 0.15];
const staticHigh = [0.9, 0.85, 0.2, 0.3, 0.1];
const filterNormal = [0.1, 0.8, 0.85, 0.8, 0.9];
const names = ['dirty filter', 'small return', 'low charge', 'return leak', 'none'];
const next = {
  'filter drop high': [[0.9, 0.2, 0.15, 0.2, 0.1], 0.40807111],
  'return grille pressure high': [[0.35, 0.9, 0.15, 0.2, 0.1], 0.28255554],
  'superheat high': [[0.1, 0.1, 0.9, 0.15, 0.05], 0.12072797],
  'smoke drawn in at the return': [[0.05, 0.1, 0.05, 0.9, 0.05], 0.2034603],
} as const;

function bayesRows(): Row[] {
  const after = posterior(prior, staticHigh);
  const then = posterior(after, filterNormal);
  const each = (name: string, expected: readonly number[], ours: readonly number[]) =>
    expected.map((x, i) => check(name, names[i] ?? '', '', x, 1e-8, ours[i]));
  const normal = normalPosterior({ mean: 150, sd: 30 }, { mean: 180, sd: 20 });
  const all = prior.reduce((sum, p, i) => sum + p * (staticHigh[i] ?? 0), 0);
  return [
    check('static high', 'chance', '', 0.5725, 1e-15, all),
    ...each('after static high', [0.47161572, 0.37117904, 0.05240175, 0.07860262, 0.02620087], after),
    ...each('then filter drop normal', [0.09926471, 0.625, 0.09375, 0.13235294, 0.04963235], then),
    check('before anything', 'entropy', 'bit', 2.2527242, 1e-7, entropy(prior)),
    check('after static high', 'entropy', 'bit', 1.69110748, 1e-7, entropy(after)),
    ...Object.entries(next).map(([name, [yes, gain]]) =>
      check(name, 'expected gain', 'bit', gain, 1e-7, expectedGain(after, yes)),
    ),
    check('normal prior 150 ± 30, reading 180 ± 20', 'mean', 'W/K', 170.769231, 1e-6, normal.mean),
    check('normal prior 150 ± 30, reading 180 ± 20', 'sd', 'W/K', 16.641006, 1e-6, normal.sd),
  ];
}

export const source: ValidationSource = {
  id,
  title: 'Readings: flow from heat, bags, and which cause fits',
  measure: () => [...heatRows(), ...bagRows(), ...leakRows(), ...bayesRows()],
};
