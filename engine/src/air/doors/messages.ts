import { numberIn } from '../../plan/facts.ts';
import type { Judged } from '../../plan/judge.ts';
import { name, nothingToDo, type Say } from '../say.ts';
import { gapMost, openShare } from './doorWork.ts';

const burns: Readonly<Record<string, string>> = {
  heater: 'a water heater with an open draught hood',
  furnace: 'a boiler or furnace with an open draught hood',
  stove: 'a wood stove or open fire',
};

/** Words for what shut doors do. */
export const sayDoors: Readonly<Record<string, Say>> = {
  'closed-door': (j, print) => ({
    what: `With its door shut “${name(j)}” ${j.facts?.way === 'in' ? 'is drawn below' : 'is blown above'} the hall by ${print.value(j)}; ${print.limit(j)} is the usual limit.${lostAir(Number(j.facts?.lost), print)}${windy(j, print)}`,
    why:
      j.facts?.way === 'in'
        ? 'A room that is sucked empty pulls in cold air through every crack, and its door is hard to open.'
        : 'Air that cannot get out does not come in: the room starves, its walls are pushed full of moist air, and the rest of the house draws cold air in.',
    mend: j.status === 'ok' ? nothingToDo : wayOut(Number(j.facts?.gap), numberIn(j, 'extra'), print),
  }),
  'house-pressure': (j, print) => ({
    what: `With the blower ${numberIn(j, 'blows') === 1 ? 'on' : 'off, which is worse here,'} and ${print.quantity(numberIn(j, 'doors'), 'count')} doors shut, the place where the flue stands goes to ${print.value(j)} against outdoors ${drawnBy(j, print)}${worstIn(j)}; for ${burns[String(j.facts?.burns)] ?? burns.heater} ${print.limit(j)} is the usual limit.`,
    why: 'Drawn too far below outdoors, a flue turns round and fills the house with its gases. Carbon monoxide has no smell.',
    mend:
      j.status === 'ok'
        ? 'Seal the ducts and keep the ways under the doors open; the test below is still to be done.'
        : 'Open ways out of the rooms that are shut, seal the return ducts and the cabinet, and do not start the blower with that flue in use before it has been tested.',
    caution: flueCaution(j, print),
  }),
};

/** What stands whatever is computed, and where nothing could be. */
export const flueCaution: (...args: Parameters<Say>) => string = (j, print) =>
  [
    numberIn(j, 'exhaust') > 0
      ? 'Fans that are not entered and a gale come on top of this.'
      : 'Exhaust fans, a dryer and a gale come on top of this.',
    coldFlue(j, print),
    'Before the first start have the flue tested under the worst case by a licensed technician, follow the appliance’s instructions and the local code, and keep a carbon monoxide alarm on every floor.',
  ].join(' ');

/** A flue that has gone cold is told of from the pull of a house that a gauge sees. */
function coldFlue(j: Judged, print: Parameters<Say>[1]): string {
  const pull = numberIn(j, 'cold');
  if (!(pull < -0.5)) return 'A flue that has gone cold may draw downwards until it is warm.';
  return `On the cold night the warm house alone pulls with ${print.quantity(-pull, 'room-pressure')} where that flue begins: one that has gone cold may draw downwards until it is warm.`;
}

const weathers: Readonly<Record<string, string>> = {
  calm: 'in calm air',
  cold: 'on the cold, still night',
  windy: 'in a fresh wind',
};

/** In which weather that is; the pull of the warm house counts for a flue that starts cold. */
const worstIn = (j: Judged): string =>
  numberIn(j, 'weathers') === 1
    ? `, worst ${weathers[String(j.facts?.weather)] ?? weathers.calm}${numberIn(j, 'pulled') === 1 ? ', with the pull of the warm house, for that flue starts cold' : ''}`
    : ', in calm air';

const windy = (j: Judged, print: Parameters<Say>[1]): string =>
  j.facts?.windy === undefined
    ? ''
    : ` In a fresh wind on its worst side it is ${print.quantity(Math.abs(numberIn(j, 'windy')), 'room-pressure')}.`;

const drawnBy: (...args: Parameters<Say>) => string = (j, print) => {
  if (!(numberIn(j, 'exhaust') > 0)) return 'from the blower alone';
  return `from ${numberIn(j, 'blows') === 1 ? 'the blower and ' : ''}${print.quantity(numberIn(j, 'exhaust'), 'flow')} of exhaust`;
};

/** A share of its air that a room loses is told from a fiftieth on. */
const lostAir = (lost: number, print: Parameters<Say>[1]): string =>
  lost >= 0.02 ? ` It gets ${print.quantity(lost, 'fraction')} less air than with the door open.` : '';

function wayOut(gap: number, extra: number, print: Parameters<Say>[1]): string {
  if (!(extra > 0))
    return 'Measure the gap under the door and the width of the leaf: what is assumed there decides it.';
  const grille = `a grille through the wall or door with ${print.opening(extra)} open, which is a face of about ${print.opening(extra / openShare)}; over the ceiling with two grilles and a duct, each of them ${print.opening((extra * Math.SQRT2) / openShare)}`;
  return gap <= gapMost
    ? `A gap of ${print.quantity(gap, 'length')} under the door would do, or ${grille}.`
    : `The door alone cannot do it: it would take a gap of ${print.quantity(gap, 'length')}. Add ${grille}.`;
}
