import type { Judged, Words } from '../plan/judge.ts';
import { namedSubject } from '../plan/namedSubject.ts';
import type { Printer } from '../plan/printer.ts';
import { unknownWords } from '../plan/unknownWords.ts';

/** What a statement about the ducts would be about. */
const subjects: Readonly<Record<string, string>> = {
  'static-pressure': 'What pressure the ducts ask of the blower',
  'operating-points': 'Where the blower runs at each of its speeds',
  'total-flow': 'How much air flows in all',
  plenum: 'How evenly the plenum feeds its ducts',
  'house-pressure': 'Whether the blower draws the house below outdoor pressure',
  sizes: 'Which sizes the ducts need',
  'no-size': 'Which size would do',
  'return-path': 'How much of the pressure the return takes',
  'filter-velocity': 'How fast air meets the filter',
  'filter-loaded': 'What a filter full of dust leaves',
  insulation: 'Whether the ducts are insulated as asked',
  jacket: 'Whether a duct’s jacket sweats',
  leakage: 'How much the ducts leak',
  'leak-test': 'What a leak test would show',
  hangers: 'How far apart the hangers are',
  sag: 'How far the flexible runs sag',
  'tight-bend': 'How tight the tightest bend is',
  'duct-speed': 'How fast air moves',
  'face-speed': 'How fast air leaves',
  'room-share': 'How much of its air reaches the room',
  'bare-room': 'What a room without a register lacks',
  balance: 'How the rooms share the air',
  throw: 'How far the jet reaches',
  'warm-reach': 'Whether warm air comes down',
  draught: 'Whether there is a draught',
  'room-sound': 'How loud the registers are',
  'blower-sound': 'How loud the blower is',
  'return-bends': 'How the blower’s sound is kept back',
  'closed-door': 'What a shut door does',
  'duct-heat': 'How much heat the ducts lose on the cold night',
  'rooms-held': 'Whether the rooms are held on the cold night',
  'rooms-cooled': 'Whether the rooms are held on the hot afternoon',
  'rooms-follow': 'Whether the rooms follow the thermostat',
  'ducts-year': 'What the ducts lose over a year',
  'ducts-stay': 'Whether the ducts that are there can stay',
  'where-built': 'What the place of the ducts costs over a year',
  space: 'Whether the duct has room',
  'cold-drop': 'Whether cold air falls too early',
};

/** A bend or damper beyond the published tables is no row that a sheet lacks. */
export function notKnown(j: Judged, print: Printer): Words {
  const subject = subjects[j.id.split(':')[0] ?? ''] ?? 'What flows through the ducts';
  const said = unknownWords(j, print, `${namedSubject(j, subject)} is not known yet.`);
  const fitting = j.because === 'out-of-range' ? j.needs?.find((path) => path.includes('.fittings.')) : undefined;
  if (fitting === undefined) return said;
  const mend = `No published table covers it: ${print.field(fitting)} of section “${fitting.split('.')[3] ?? ''}”. Tables go from half a diameter to two and a half, bends to 180°, dampers to 60°. Correct it, or leave it empty.`;
  return { ...said, mend };
}
