import { numberIn, wordsIn } from '../../plan/facts.ts';
import type { Judged } from '../../plan/judge.ts';
import type { Printer } from '../../plan/printer.ts';
import { name, nothingToDo, type Say } from '../say.ts';

const openShare = 0.7;

/** Words for what registers and grilles do in a room. */
export const sayRegisters: Readonly<Record<string, Say>> = {
  throw: (j, print) => {
    const [reach, distance] = [far(numberIn(j, 'reach'), print), far(numberIn(j, 'distance'), print)];
    const up = j.facts?.way === 'up';
    const short = numberIn(j, 'reach') < numberIn(j, 'distance');
    return {
      what: `The jet of “${name(j)}” reaches ${reach} of the ${distance} ${up ? 'up to the ceiling' : 'to the far wall'}: ${print.value(j)}.`,
      why: short
        ? 'Air that stops half-way drops there, and the far side of the room is left to itself.'
        : 'A jet that goes much further than the wall comes back along the floor as a draught.',
      mend:
        j.status === 'ok'
          ? nothingToDo
          : j.status === 'tight'
            ? 'Set the blades after the first start: straightened they throw further, spread they throw less.'
            : short
              ? `Take a smaller register with ${print.opening(numberIn(j, 'open'))} open (a face of about ${print.opening(numberIn(j, 'open') / openShare)}), straighten its blades, or put it nearer to that wall; look at its sound too.`
              : `Spread the blades, or take a larger register with ${print.opening(numberIn(j, 'open'))} open.`,
    };
  },
  'warm-reach': (j, print) => ({
    what: `On the cold night the warm air of “${name(j)}” ${likelyOf(j) > 0 ? `comes down ${far(likelyOf(j), print)} at most` : 'stays under the ceiling'}; to mix where people sit it should come down ${far(j.limit.min ?? 0, print)}. ${print.quantity(numberIn(j, 'short'), 'count')} of ${print.quantity(numberIn(j, 'all'), 'count')} registers up there fall short.`,
    why: 'Warm air that stays under the ceiling leaves feet cold, and the thermostat asks for more of it.',
    mend:
      j.status === 'ok'
        ? nothingToDo
        : 'Blow it straight down beside the cold outside wall, or put registers low; run the blower longer at lower heat, which makes the air less warm; or keep a slow ceiling fan for it.',
  }),
  'cold-drop': (j, print) => ({
    what: `On the hot afternoon the air of “${name(j)}”, ${print.quantity(numberIn(j, 'colder'), 'temperature-difference')} colder than the room, falls ${likelyOf(j) < numberIn(j, 'above') ? `up to ${far(likelyOf(j), print)}` : 'to the floor'} on its way to the far wall if it does not cling to the ceiling; ${far(j.limit.max ?? 0, print)} are free above heads.`,
    why: 'Cold air that drops on a bed or sofa gets its register closed.',
    mend:
      j.status === 'ok'
        ? nothingToDo
        : 'Tilt the blades a little upward so that the air clings to the ceiling, set it within a hand of the ceiling, or take a smaller open face: faster air falls less. Do not aim it at bed, sofa or cot.',
  }),
  draught: (j, print) => ({
    what: `${j.facts?.season === 'heating' ? 'On the cold night' : 'On the hot afternoon'} the air of “${wordsIn(j, 'register')}” passes ${placeWords(j)} in “${name(j)}” ${highOf(j) < hardlyMoving ? 'aside or hardly moving' : `at ${print.value(j)}`}; ${print.limit(j)} is where people at rest begin to feel it.`,
    why: 'Who lies or sits still feels moving air as cold, warm as it may be, and shuts the register.',
    mend:
      j.status === 'ok'
        ? 'Nothing to do; keep the blades turned away from it.'
        : 'Turn the blades away from it, move bed, cot or sofa out of the way the air takes, fan the register out, or run it slower through a larger face.',
  }),
  'room-sound': (j, print) => ({
    what: `Registers and grilles of “${name(j)}” are heard at ${heard(j, print)}; ${print.limit(j)} suits such a room, and the loudest is “${wordsIn(j, 'loudest')}”.`,
    why: 'A hiss at night gets a towel pushed into the register, and then the room starves. The blower’s own noise comes on top.',
    mend:
      j.status === 'ok'
        ? nothingToDo
        : `Bring the air through “${wordsIn(j, 'loudest')}” down to ${print.quantity(numberIn(j, 'share'), 'fraction')} of its flow with a second register, or give it more open face; throttle at the plenum, never at the register.`,
  }),
  'blower-sound': (j, print) => ({
    what: `The blower is heard out of “${name(j)}” in “${wordsIn(j, 'room')}” at ${heard(j, print)}, give or take much: ${print.value(j)}; ${print.limit(j)} suits that room.`,
    why: 'No published method covers blowers as small as a house’s: this is what large ones would make, with a wide range. The maker’s own sound figures stand above it.',
    mend:
      j.status === 'ok'
        ? nothingToDo
        : 'Ask the maker for its sound figures; take pressure off it, as half the pressure is 6 dB; lead the return through some metres of flexible duct or lined board and round a bend.',
  }),
  'return-bends': (j, print) => ({
    what: `Between “${name(j)}” and the blower ${likelyOf(j) === 1 ? 'is one bend' : `are ${print.value(j)} bends`}, on ${far(numberIn(j, 'length'), print)} of way.`,
    why: 'A short straight return is a speaking tube: the blower is heard in the room as if it stood there.',
    mend:
      j.status === 'ok'
        ? 'Nothing to do; board with its lined side in keeps the rest of the noise out.'
        : 'Lead the return round one bend, in flexible duct or lined board, before you cut the ceiling; not over a bedroom or the sofa.',
  }),
};

/** m/s below which nobody tells moving air from still. */
const hardlyMoving = 0.05;
const highOf = (j: Judged): number =>
  !j.value.ok ? 0 : typeof j.value.value === 'number' ? j.value.value : j.value.value.high;

/** “the bed”, or its own name. */
const placeWords = (j: Judged): string =>
  j.facts?.place === undefined ? `the ${String(j.facts?.kind ?? 'bed')}` : `“${String(j.facts.place)}”`;

/** Across a room nobody asks for sixteenths of an inch. */
const far = (length: number, print: Printer): string =>
  print.inUnit(length, 'length', print.system === 'us' ? 'ft' : 'm');

/** The lowest curve that is drawn; what lies under it nobody hears. */
const lowestCurve = 15;
const heard = (j: Judged, print: Printer): string =>
  likelyOf(j) < lowestCurve
    ? `less than ${print.quantity(lowestCurve, 'noise-criterion')}, which is hardly heard`
    : print.rounded(likelyOf(j), 'noise-criterion');

const likelyOf = (j: Judged): number =>
  !j.value.ok ? 0 : typeof j.value.value === 'number' ? j.value.value : j.value.value.likely;
