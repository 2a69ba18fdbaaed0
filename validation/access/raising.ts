// Source: statics of ramps, stairs and anchors, a mass on a spring, an attic's hour. See README.md.
import {
  anchorPull,
  drawUp,
  holdBack,
  lowerShare,
  ownFrequency,
  shakenThrough,
  workBetween,
  workHour,
} from '@kneewall/engine/access';
import { humidityRatio } from '@kneewall/engine/physics';
import type { Row } from '../src/row.ts';
import { check, inch } from './check.ts';

/** Pa. */
const seaLevel = 101_325;

const ramps = (): Row[] =>
  (
    [
      [60, 30, 0.35, 472.548468, 115.850532],
      [45, 20, 0.1, 192.401798, 109.464668],
      [80, 90, 0.35, 784.532, 784.532],
    ] as const
  ).flatMap(([mass, slope, friction, up, back]) => [
    check(`${mass} kg, ${slope}°, ${friction}`, 'pull up', 'N', up, 1e-5, drawUp({ mass, slope, friction })),
    check(`${mass} kg, ${slope}°, ${friction}`, 'hold back', 'N', back, 1e-5, holdBack({ mass, slope, friction })),
  ]);

const anchors = (): Row[] => {
  const found = anchorPull(588.399, 217.131, 20);
  return [
    check('60 kg on 3 parts of 0.95, pulled 20° aside', 'anchor', 'N', 795.907583, 1e-5, found.force),
    check('60 kg on 3 parts of 0.95, pulled 20° aside', 'leans', '°', 5.353844, 1e-5, found.aside),
    check('1.3 m long, middle 0.25 m up, stair of 37°', 'lower one', '', 0.644914, 1e-6, lowerShare(1.3, 0.25, 37)),
  ];
};

const mounts = (): Row[] => [
  // The handbook rule is 188 over the root of the inches, in a minute; it rounds gravity.
  check('an inch of sag', 'own frequency', 'Hz', 188 / 60, 0.01, ownFrequency(inch), 'from memory'),
  check('20 mm, 800 a minute', 'own frequency', 'Hz', 3.52424, 1e-5, ownFrequency(0.02)),
  check('20 mm, 800 a minute', 'comes through', '', 0.0751116, 1e-6, shakenThrough(0.02, 800 / 60)),
];

/** Of 50 °C, 10 % and a globe of 52 °C; the bulb by another formula, so within its errors. */
const hours = (): Row[] => {
  const hot = workHour(
    { air: 50, humidity: humidityRatio({ t: 50, rh: 0.1 }, seaLevel), roof: 54 },
    { effort: 'light', used: true, clothes: 0 },
    seaLevel,
  );
  return [
    check('50 °C, 10 %, globe 52 °C', 'globe', '°C', 52, 1e-9, hot.globe),
    check('50 °C, 10 %, globe 52 °C', 'WBGT', '°C', 33.3, 0.5, hot.index),
    check('50 °C, 10 %, globe 52 °C', 'work in an hour', 'min', 0, 0, hot.minutes, 'from memory'),
    check(
      'hours of 60, 30 and 0 min from 5:00, between 5:30 and 7:30',
      'work',
      'min',
      60,
      1e-9,
      workBetween(
        Array.from({ length: 24 }, (_, h) => (h === 5 ? 60 : h === 6 ? 30 : 0)),
        5.5 * 3600,
        7.5 * 3600,
      ) / 60,
    ),
  ];
};

export const raisingRows = (): Row[] => [...ramps(), ...anchors(), ...mounts(), ...hours()];
