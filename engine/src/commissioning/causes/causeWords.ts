import type { FaultKind } from './faults.ts';

/** A cause in words, and what to do about it. `at` is the name of the register it is at. */
type CauseWords = { readonly what: (at: string) => string; readonly mend: string; readonly caution?: string };

const licensed = 'Refrigerant is under pressure and may burn: gauges, filling and recovery are licensed work.';
const live = 'Isolate and prove dead before a cover comes off; work on live parts is licensed work.';
const say = (words: string) => () => words;

export const causeWords: Readonly<Record<FaultKind, CauseWords>> = {
  none: { what: say('nothing is wrong'), mend: 'Nothing to do: keep the readings for next season.' },
  'dirty-filter': {
    what: say('the filter is loaded, too dense or too small'),
    mend: 'Read once with the filter out for a minute; then a clean one with more face or less resistance.',
  },
  'crushed-run': {
    what: (at) => `the run to “${at}” is crushed or kinked`,
    mend: 'Follow the run by hand: hangers, bends over joists, what lies on it.',
  },
  'shut-damper': {
    what: (at) => `the damper or register of “${at}” is shut`,
    mend: 'Open the register and look at the damper’s handle: along the duct is open.',
  },
  'loose-run': {
    what: (at) => `the run to “${at}” has come off or leaks`,
    mend: 'Look for the warm or cold draught at both of its ends; collar, strap, mastic.',
  },
  'supply-leak': {
    what: say('the supply plenum or trunk leaks'),
    mend: 'Smoke along its seams and take-offs; mastic.',
  },
  'return-leak': {
    what: say('the return draws attic air'),
    mend: 'Smoke along the return box and the filter’s door: it is drawn in at the leak.',
    caution: 'A return that leaks can draw fumes from a flue: an alarm for carbon monoxide in the rooms.',
  },
  'return-choked': {
    what: say('the return is choked or too small'),
    mend: 'Grille, its louvres and what stands before it first; then the duct behind it.',
  },
  'blower-setting': {
    what: say('the blower stands at another setting'),
    mend: 'Compare its switches or taps with the settings sheet.',
    caution: live,
  },
  'other-speed': {
    what: say('the unit did not run at the speed that was entered'),
    mend: 'Look at its display or its draw again; hold it at full speed with the set point far off.',
  },
  'low-charge': {
    what: say('too little refrigerant'),
    mend: 'Have the charge weighed, and leaks looked for first.',
    caution: licensed,
  },
  'high-charge': { what: say('too much refrigerant'), mend: 'Have the charge weighed.', caution: licensed },
  'no-insulation': {
    what: say('insulation is missing on ducts outside the rooms'),
    mend: 'Look at sleeves and joints along the runs.',
  },
  'blocked-drain': {
    what: say('the drain is blocked or its trap is dry'),
    mend: 'Unit off; pour water into the pan and watch it leave.',
  },
  'strips-on': {
    what: say('backup strips are on'),
    mend: 'Switch their breaker off and see the power fall; then wiring and lock-out.',
    caution: live,
  },
  'no-transfer': {
    what: (at) => `air has hardly a way out of “${at}” with its door shut`,
    mend: 'Look under the door and at its transfer grille: carpet, a rug, paint, a grille that was never cut. Then cut the door or set the grille as planned.',
  },
  oversize: {
    what: say('the house needs less heat than planned'),
    mend: 'Nothing is broken: a log over a week tells how much less.',
  },
  'sensor-place': {
    what: say('the room sensor hangs in the wrong place'),
    mend: 'Away from supply air, sun, outer walls and holes behind it.',
  },
  'gauge-wrong': {
    what: say('the pressure was read in the wrong place or units'),
    mend: 'Zero the gauge, look at both hoses, tips square to the air.',
  },
  'flow-wrong': {
    what: say('bag, hood or vane reads wrong throughout'),
    mend: 'Read one register with another method, or compare their sum with the blower’s table.',
  },
  'thermometer-wrong': {
    what: say('the supply thermometer sees the coil or the strips'),
    mend: 'Farther along the plenum, out of sight of the coil; hold both probes together once.',
  },
  'base-load': {
    what: say('the house’s own draw is in the reading'),
    mend: 'Unit off at its breaker for a minute, read the meter again, take it off.',
  },
  other: { what: say('something that is not in this list'), mend: 'Ask somebody who does this for a living.' },
};
