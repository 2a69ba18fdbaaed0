import { fact, name, nothingToDo, type Say } from '../say.ts';

/** A gap that can still be called a gap under a door, m (1 1/2 in). */
const gapMost = 0.0381;
/** Open share of a usual grille's face. */
const openShare = 0.7;

const burns: Readonly<Record<string, string>> = {
  heater: 'a water heater with an open draught hood',
  furnace: 'a boiler or furnace with an open draught hood',
  stove: 'a wood stove or open fire',
};

/** Words for what shut doors do. */
export const sayDoors: Readonly<Record<string, Say>> = {
  'closed-door': (j, print) => ({
    what: `With its door shut “${name(j)}” ${j.facts?.way === 'in' ? 'is drawn below' : 'is blown above'} the hall by ${pascals(j, print)}; ${print.inUnit(j.limit.max ?? 0, 'pressure', 'Pa')} is the usual limit.${lostAir(Number(j.facts?.lost), print)}`,
    why:
      j.facts?.way === 'in'
        ? 'A room that is sucked empty pulls in cold air through every crack, and its door is hard to open.'
        : 'Air that cannot get out does not come in: the room starves, its walls are pushed full of moist air, and the rest of the house draws cold air in.',
    mend: j.status === 'ok' ? nothingToDo : wayOut(Number(j.facts?.gap), fact(j, 'extra'), print),
  }),
  'house-pressure': (j, print) => ({
    what: `With the blower ${fact(j, 'blows') === 1 ? 'on' : 'off, which is worse here,'} and ${print.quantity(fact(j, 'doors'), 'count')} doors shut, the rooms with the flue stand at ${pascals(j, print)} against outdoors ${drawnBy(j, print)}; for ${burns[String(j.facts?.burns)] ?? burns.heater} ${print.inUnit(j.limit.min ?? 0, 'pressure', 'Pa')} is the usual limit.`,
    why: 'Drawn too far below outdoors, a flue turns round and fills the house with its gases. Carbon monoxide has no smell.',
    mend:
      j.status === 'ok'
        ? 'Seal the ducts and keep the ways under the doors open; the test below is still to be done.'
        : 'Open ways out of the rooms that are shut, seal the return ducts and the cabinet, and do not start the blower with that flue in use before it has been tested.',
    caution: `${fact(j, 'exhaust') > 0 ? 'Wind comes' : 'Exhaust fans, a dryer and wind come'} on top of this. Before the first start have the flue tested under the worst case by a licensed technician, follow the appliance’s instructions and the local code, and keep a carbon monoxide alarm on every floor.`,
  }),
};

const drawnBy: (...args: Parameters<Say>) => string = (j, print) => {
  if (!(fact(j, 'exhaust') > 0)) return 'from the blower alone';
  return `from ${fact(j, 'blows') === 1 ? 'the blower and ' : ''}${print.quantity(fact(j, 'exhaust'), 'flow')} of exhaust`;
};

/** Gauges are set to pascals for doors, whatever the rest is said in. */
const pascals: (...args: Parameters<Say>) => string = (j, print) =>
  j.value.ok ? print.inUnit(j.value.value, 'pressure', 'Pa') : '';

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
