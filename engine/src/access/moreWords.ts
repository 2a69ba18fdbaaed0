import { heatLimits } from '../plan/cautions.ts';
import { numberIn } from '../plan/facts.ts';
import type { Judged, Words } from '../plan/judge.ts';
import type { Printer } from '../plan/printer.ts';
import { clockOf } from './clock.ts';

type Say = (j: Judged, print: Printer) => Words;

const mass = (j: Judged, print: Printer, key: string): string => print.quantity(numberIn(j, key), 'mass');
const under = 'Nobody under the load or below it on the slope, ever; helmet, gloves, shoes with caps.';

/** Hours and minutes of work, in words. */
const long = (seconds: number): string => {
  const minutes = Math.round(seconds / 60);
  return minutes < 60 ? `${minutes} min` : `${Math.floor(minutes / 60)} h ${minutes % 60} min`;
};

function outdoorWay(j: Judged): string {
  return j.facts?.up === 'ramp' ? `up a ramp of ${Math.round(numberIn(j, 'slope'))}°` : 'straight up';
}

function windowWords(j: Judged, print: Printer): Words {
  const span = `${clockOf(numberIn(j, 'from'))} to ${clockOf(numberIn(j, 'until'))}`;
  const none = j.value.ok && j.value.value === 0;
  const litres = numberIn(j, 'drink');
  const water =
    litres === 0
      ? ''
      : ` ${print.system === 'us' ? print.quantity(litres / 1000, 'volume') : `${Math.ceil(10 * litres) / 10} L`} of water for each person.`;
  return {
    what: `${j.facts?.day}, ${span} sun time: ${long(numberIn(j, 'work'))} of work in the attic${none ? '; at least one of its hours leaves none' : ''}.${water}`,
    why: 'By the house’s own year, on a day of that month that nine of ten do not pass. In the rest of each hour one cools down below.',
    mend:
      j.status === 'ok'
        ? 'Look at a thermometer up there before you begin: a hotter day counts by itself.'
        : numberIn(j, 'bestWork') > numberIn(j, 'work') + 60
          ? `Begun at ${clockOf(numberIn(j, 'best'))} as many hours leave ${long(numberIn(j, 'bestWork'))} of work.`
          : 'Wait for another month, or do the work that is not in the attic.',
    caution: heatLimits,
  };
}

/** What is said of working alone, ladders, the outdoor unit, what lies under the unit, and planned hours. */
export const more: Readonly<Record<string, Say>> = {
  alone: (j, print) => ({
    what:
      j.status === 'ok'
        ? `${print.value(j)} people are there.`
        : `One person is there. Not alone: ${String(j.facts?.risky)}.`,
    why: 'Who slips, faints or is caught under a load alone lies there until somebody looks.',
    mend:
      j.status === 'ok' ? 'One of them stays where the others can be heard.' : 'Find a second person for those steps.',
    caution: 'Somebody who is not in the attic knows who is, and can call for help.',
  }),
  ladder: (j, print) => ({
    what: `Person, tools and unit are ${print.value(j)} on the ladder; it is made for ${print.limit(j)}.`,
    why: 'It counts everything that stands on it.',
    mend:
      j.status === 'ok'
        ? 'Still, nobody carries a unit up a ladder: hoist it beside.'
        : 'Hoist it; nobody carries a unit up a ladder.',
    caution: 'Three points of a person stay on a ladder: no hand is left for a load. Falls kill.',
  }),
  'outdoor-pull': (j, print) => ({
    what: `To bring ${mass(j, print, 'mass')} ${outdoorWay(j)} each of those at the rope pulls like ${print.value(j)}; ${print.limit(j)} is what a person keeps up.${numberIn(j, 'back') > 0 ? ` Let go, it slides back with up to ${mass(j, print, 'back')}.` : j.facts?.up === 'ramp' ? ' Friction holds it where it is left.' : ''}`,
    why: 'Who pulls at the end of his strength lets go.',
    mend:
      j.status === 'ok'
        ? 'A turn round a post holds it while hands change.'
        : 'A gentler ramp, a trolley or rollers with a brake, more parts of rope, or more people.',
    caution: `${under} No rope round a hand. Dry planks, fixed at both ends.`,
  }),
  'outdoor-anchor': (j, print) => ({
    what: `The anchor gives way at ${print.value(j)}; five times the pull on it is ${print.limit(j)}, ${j.facts?.up === 'ramp' ? `along the ramp, ${Math.round(numberIn(j, 'slope'))}° below the level` : 'straight down'}.`,
    why: 'It holds load, friction and the pull on the rope, in that direction and in jerks.',
    mend:
      j.status === 'ok'
        ? 'Look at every knot and shackle; a second rope as a safeguard.'
        : 'A stronger anchor: a post in the ground, a tree, a beam. No rail, gutter or siding.',
    caution: `${under} A house’s eave is not made to be hung from: ask a structural engineer.`,
  }),
  across: (j, print) => ({
    what: `The timbers across the joists use ${print.value(j)} of their strength where a foot of the unit stands halfway between two joists.`,
    why: 'They share the unit among joists only as long as they are stiff themselves.',
    mend:
      j.status === 'ok'
        ? 'Screw them to every joist they cross.'
        : 'Stand them on edge, take wider ones, or more of them.',
    caution: 'A planning number for sound, dry timber. Where it is close, ask a structural engineer.',
  }),
  mounts: (j, print) => ({
    what: `At the blower’s speeds ${print.value(j)} of its shaking comes through to the wood; ${print.limit(j)} is the most. On its mounts the unit swings ${(Math.round(10 * numberIn(j, 'own')) / 10).toString()} times a second by itself.`,
    why: 'Joists carry every turn of the blower into the room below.',
    mend:
      j.status === 'ok'
        ? 'Ducts, pipes and wires need a soft or slack joint too, or they carry it past the mounts.'
        : 'Mounts that give more under its weight: springs, not pads, for slow blowers.',
  }),
  'heat-window': windowWords,
};

export const moreSubjects: Readonly<Record<string, string>> = {
  alone: 'Whether anybody would be alone',
  ladder: 'Whether the ladder carries it',
  'outdoor-pull': 'How hard the outdoor unit is pulled up',
  'outdoor-anchor': 'Whether the anchor of the outdoor unit holds',
  across: 'Whether the timbers across the joists carry the unit',
  mounts: 'How much of the blower’s shaking comes through',
  'heat-window': 'How long the attic can be worked in on that day',
};
