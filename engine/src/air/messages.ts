import { numberIn } from '../plan/facts.ts';
import type { Judged, Words } from '../plan/judge.ts';
import type { Printer } from '../plan/printer.ts';
import { sayBalance } from './balance/messages.ts';
import { heldFlowWhy, sayBlowers } from './blower/messages.ts';
import { flueCaution, sayDoors } from './doors/messages.ts';
import { sayFaults } from './faults/messages.ts';
import { sayFilters } from './filters/messages.ts';
import { notKnown } from './notKnown.ts';
import { sayRegisters } from './registers/messages.ts';
import { nothingToDo as done, name, type Say } from './say.ts';
import { saySizes } from './sizing/findingWords.ts';
import { whereBuilt } from './whereBuiltWords.ts';

/** The change of one size that was solved and found to be enough. */
function provenChange(j: Judged, print: Printer): string {
  if (j.facts?.section === undefined)
    return 'No single duct made larger brings it under. Enlarge the return and its filter first, shorten what is long, then look again.';
  return `Make “${j.facts.section}” ${print.quantity(numberIn(j, 'to'), 'length')} instead of ${print.quantity(numberIn(j, 'from'), 'length')}: solved again, that takes it to ${print.quantity(numberIn(j, 'pressureThen'), 'pressure')} with ${print.quantity(numberIn(j, 'flowThen'), 'flow')} moving.`;
}

const say: Readonly<Record<string, Say>> = {
  ...sayBlowers,
  ...sayBalance,
  ...sayDoors,
  ...sayFaults,
  ...sayFilters,
  ...sayRegisters,
  ...saySizes,
  'static-pressure': (j, print) => ({
    what: `The ducts, filter and registers ask the blower for ${print.value(j)} of static pressure; the unit allows ${print.limit(j)}.${numberIn(j, 'beneath') > 0 ? ' That is beyond the blower’s table: its last line is continued, so take it as rough.' : ''}`,
    why:
      heldFlowWhy(j, print) ??
      'Above it the air falls off, the coil ices or overheats, and the blower gets loud and short-lived.',
    mend:
      j.status === 'ok'
        ? done
        : j.status === 'tight'
          ? 'Pull the flexible ducts as tight as they go and support them every 4 ft: slack is what makes this uncertain.'
          : provenChange(j, print),
  }),
  'total-flow': (j, print) => ({
    what: `${print.quantity(numberIn(j, 'flow'), 'flow')} will flow, ${print.value(j)} of what the unit’s figures are stated for.`,
    why: 'Less air means less heat than the sheet says, and supply air too hot or too cold.',
    mend:
      j.status === 'ok'
        ? done
        : (j.margin ?? 0) < 0 && Number(j.value.ok && typeof j.value.value !== 'number' ? j.value.value.likely : 1) > 1
          ? 'Choose the next lower blower setting.'
          : 'Free the air: a larger return, a larger filter, tighter flexible duct; or a higher blower setting if there is one.',
  }),
  'return-path': (j, print) => ({
    what: `The return and the filter use ${print.value(j)} of all the pressure: ${print.quantity(numberIn(j, 'used'), 'pressure')}, of which the filter ${print.quantity(numberIn(j, 'filter'), 'pressure')}.`,
    why: 'A thin return is the usual mistake of this job, and the dearest to mend once the ceiling is cut.',
    mend:
      j.status === 'ok'
        ? done
        : 'Use a larger grille and filter, and a return one or two sizes larger or a second one, before you cut the ceiling.',
  }),
  'filter-velocity': (j, print) => ({
    what: `Air meets the filter at ${print.value(j)}; ${print.limit(j)} is the usual limit.`,
    why: 'Faster air is louder, loads the blower and pulls dust through.',
    mend:
      j.status === 'ok'
        ? done
        : `Give the filter a face of at least ${print.opening(numberIn(j, 'area'))}: a larger one, or two.`,
  }),
  jacket: (j, print) => ({
    what:
      (j.margin ?? 0) >= 0
        ? `In a muggy evening the jacket of “${name(j)}” stays ${print.value(j)} above the dew point.`
        : `In a muggy evening the jacket of “${name(j)}” falls below the dew point and drips.`,
    why: 'A wet jacket soaks the insulation below it and stains the ceiling. It sweats in the evening and at night, not in the heat of noon.',
    mend:
      j.status === 'ok'
        ? 'Keep the jacket whole: a torn one sweats at once.'
        : 'Use thicker insulation with an unbroken vapour jacket, tape every seam, and keep it from being squeezed.',
  }),
  insulation: (j, print) => ({
    what: `The thinnest duct insulation outside the heated rooms is ${print.value(j)}, on “${name(j)}”; ${print.limit(j)} is asked for in an attic by many codes.`,
    why: 'It loses heat all winter and sweats on muggy nights.',
    mend:
      j.status === 'ok'
        ? done
        : 'Wrap it once more, or bury it in the attic’s insulation where the local code allows; ask the building office for its figure.',
  }),
  leakage: (j, print) => ({
    what: `With the sealing you described ${print.value(j)} of the air leaks away or in.`,
    why: 'Air lost to the attic is heat paid for and draughts pulled in elsewhere.',
    mend:
      j.status === 'ok'
        ? done
        : 'Seal every collar, seam and the cabinet with mastic, then test before anything is covered.',
  }),
  'leak-test': (j, print) => ({
    what: `Leaking as described the ducts would lose ${print.value(j)} in a test at 25 Pa; many codes allow ${print.limit(j)} for ${print.quantity(numberIn(j, 'floor'), 'area')} of floor.`,
    why: 'The test is the one moment at which leaks can still be reached; an inspector may ask for it.',
    mend:
      j.status === 'ok'
        ? 'Test it all the same before anything is covered; what is described here is only hoped for.'
        : 'Seal collars, seams and the cabinet with mastic, test with the registers taped over, feel for the leaks and seal again; ask the building office for its figure.',
  }),
  hangers: (j, print) => ({
    what: `“${name(j)}” hangs from supports ${print.value(j)} apart, the widest of the flexible runs; ${print.limit(j)} is the usual limit.`,
    why: 'Between far hangers flexible duct sags, goes slack and takes several times the pressure.',
    mend: j.status === 'ok' ? done : 'Add saddles at least 1 1/2 in wide between them, and pull the run tight again.',
  }),
  sag: (j, print) => ({
    what: `“${name(j)}” sags by ${print.value(j)} of the way between its hangers; ${print.limit(j)} is the usual limit.`,
    why: 'A sagging run is a slack one, and water stands in its low places.',
    mend: j.status === 'ok' ? done : 'Cut it to length, pull it tight, and put a saddle where it hangs lowest.',
  }),
  plenum: (j, print) => ({
    what: `The first take-off sits ${print.value(j)} past the unit; ${print.limit(j)} is the least.`,
    why: 'Air leaves a blower in a lopsided jet: a take-off in it gets too much or is sucked empty, whatever its damper says.',
    mend:
      j.status === 'ok' ? done : 'Lengthen the plenum, or take the first run off further on; keep collars off its end.',
  }),
  'tight-bend': (j, print) => ({
    what: `The tightest bend of flexible duct, in “${name(j)}”, has a radius of ${print.rounded(numberOf(j), 'number')} diameters; ${print.limit(j)} is the least.`,
    why: 'A kinked bend costs more than the whole run.',
    mend:
      j.status === 'ok'
        ? done
        : `Lead it round on a radius of at least ${print.quantity(numberIn(j, 'diameter'), 'length')}, or put in a metal elbow.`,
  }),
  'duct-speed': (j, print) => ({
    what: `Air moves at ${print.value(j)} in “${name(j)}”; above ${print.limit(j)} it is heard.`,
    why: 'Fast air hisses at night and costs pressure.',
    mend:
      j.status === 'ok'
        ? done
        : j.item
          ? 'It is bought: close nothing on it, and let a second run take part of its air.'
          : j.facts?.enough === undefined
            ? 'Split it into two runs.'
            : `${print.quantity(numberIn(j, 'enough'), 'length')} round would be quiet at this flow.`,
  }),
  'face-speed': (j, print) => ({
    what: `Air passes the face of “${name(j)}” at ${print.value(j)}; above ${print.limit(j)} it is heard.`,
    why: 'A grille that whistles ends up closed, and then the room starves.',
    mend:
      j.status === 'ok'
        ? done
        : `Use a face of at least ${print.opening(numberIn(j, 'area'))}, or ${print.quantity(numberIn(j, 'count'), 'count')} of this size.`,
  }),
  'room-share': (j, print) => ({
    what: `“${name(j)}” gets ${print.quantity(numberIn(j, 'reaches'), 'flow')} of the ${print.quantity(numberIn(j, 'wanted'), 'flow')} that its ${String(j.facts?.governs)} load asks for: ${print.value(j)}.`,
    why: 'A room that gets too little air stays cold, whatever the unit can do.',
    mend:
      j.status === 'ok'
        ? done
        : 'Give its duct the next size, shorten it or take out a bend; or throttle the rooms that get more than they need.',
  }),
  'bare-room': (j, print) => ({
    what: `“${name(j)}” has no register and loses ${print.value(j)} on the cold night.`,
    why: 'It is heated only through the open door.',
    mend:
      j.status === 'ok'
        ? 'Fine for so small a load, with the door open.'
        : 'Add a register, or a transfer grille and keep the door open in the cold.',
  }),
  'duct-heat': (j, print) => ({
    what: `On the cold night the attic takes ${print.value(j)} of the heat: ${print.quantity(numberIn(j, 'lost'), 'power')} through the ducts’ walls and leaks, with the attic at ${print.quantity(numberIn(j, 'attic'), 'temperature')}.`,
    why: 'It is made with your electricity and never reaches a room.',
    mend:
      j.status === 'ok'
        ? done
        : 'Shorten the runs, seal every joint, bury the ducts in insulation, or move the air handler indoors.',
  }),
  'rooms-follow': (j, print) => ({
    what:
      numberIn(j, 'cold') >= 1
        ? `With the thermostat in “${String(j.facts?.thermostat)}”, “${name(j)}” is more than a degree too cold in ${print.value(j)} of the hours in which the unit heats; it falls to ${print.quantity(numberIn(j, 'lowest'), 'temperature')}.`
        : `With the thermostat in “${String(j.facts?.thermostat)}” every room follows through the year.`,
    why: 'One thermostat decides for all rooms. A room that gets too little air stays cold whatever the unit can do.',
    mend:
      j.status === 'ok'
        ? done
        : 'Give that room more air, seal and insulate it first, keep its door open, or hang the thermostat where it matters most.',
  }),
  'where-built': whereBuilt,
  'ducts-stay': (j, print) => ({
    what: `The ducts that are there let ${print.value(j)} of the air through that the unit wants, and ${print.quantity(numberIn(j, 'leaks'), 'fraction')} of it leaks.`,
    why: 'Old ducts were sized for another unit. Patching costs a fraction of new ones, and new ones are wasted where the old could stay.',
    mend: `${
      j.status === 'ok'
        ? 'They can stay.'
        : j.facts?.name === undefined
          ? 'They are too small for this unit.'
          : `Change “${name(j)}” first: ${print.quantity(numberIn(j, 'to'), 'length')} instead of ${print.quantity(numberIn(j, 'from'), 'length')} brings ${print.quantity(numberIn(j, 'more'), 'flow')} more.`
    } Sealing every joint with mastic saves ${print.quantity(numberIn(j, 'sealing'), 'energy')} of electricity a year, wrapping them as well ${print.quantity(numberIn(j, 'wrapping'), 'energy')}. Old duct board, tape and insulation may hold asbestos: have them looked at before you touch them.`,
  }),
  'ducts-year': (j, print) => ({
    what: `Over the year ${print.value(j)} of the unit’s heat only makes good what the ducts lose and leak: ${print.quantity(numberIn(j, 'lost'), 'energy')}.`,
    why: 'Ducts outside the rooms cost this every year. It belongs into the decision where the air handler stands.',
    mend:
      j.status === 'ok'
        ? done
        : 'Seal the joints with mastic, shorten the runs, bury them in the attic’s insulation where the local code allows, or keep air handler and ducts inside.',
  }),
  'rooms-held': (j, print) => ({
    what:
      (j.margin ?? 0) >= 0
        ? `${print.quantity(numberIn(j, 'delivered'), 'power')} reaches the rooms on the cold night, ${print.quantity(Math.abs(j.margin ?? 0), 'power')} more than they lose.`
        : `${print.quantity(numberIn(j, 'delivered'), 'power')} reaches the rooms on the cold night, ${print.quantity(Math.abs(j.margin ?? 0), 'power')} less than they lose.`,
    why: 'This is what counts in the end: the unit at the flow the ducts let through, less what the attic takes.',
    mend:
      j.status === 'ok'
        ? done
        : 'Seal and insulate the house, then the ducts; keep the stove ready for the coldest nights.',
  }),
  'rooms-cooled': (j, print) => ({
    what: `${print.quantity(numberIn(j, 'delivered'), 'power')} of cooling reaches the rooms on the hot afternoon, ${print.quantity(Math.abs(j.margin ?? 0), 'power')} ${(j.margin ?? 0) >= 0 ? 'more' : 'less'} than they take in.`,
    why: 'This is what counts in the end: the unit at the flow the ducts let through, less what a hot attic puts into them.',
    mend:
      j.status === 'ok'
        ? done
        : 'Seal and insulate the ducts, then shade the west and south windows; both are cheaper than a larger unit.',
  }),
};

const numberOf = (j: Judged): number => (j.value.ok && typeof j.value.value === 'number' ? j.value.value : 0);

export function words(j: Judged, print: Printer): Words {
  const [kind = ''] = j.id.split(':');
  if (j.status === 'unknown')
    return { ...notKnown(j, print), ...(kind === 'house-pressure' ? { caution: flueCaution(j, print) } : {}) };
  const words = say[kind];
  if (!words) throw new Error(`assert: no words for the finding ${j.id}`);
  return words(j, print);
}
