import { numberIn, wordsIn } from '../plan/facts.ts';
import type { Judged, Words } from '../plan/judge.ts';
import { namedSubject } from '../plan/namedSubject.ts';
import type { Printer } from '../plan/printer.ts';
import { unknownWords } from '../plan/unknownWords.ts';
import { learnedAgainstWords, learnedLossWords } from './learned/learnedWords.ts';
import { dampAtticWords, mouldWords, wetLayersWords } from './moistureWords.ts';

const partNames: Readonly<Record<string, string>> = {
  walls: 'The walls',
  windows: 'The windows',
  doors: 'The doors',
  ceiling: 'The ceilings',
  roof: 'The sloped roof',
  floor: 'The floor',
  air: 'Leaking air',
};
const partMends: Readonly<Record<string, string>> = {
  walls: 'Blown-in insulation from outside is the usual way; price it before you choose the unit.',
  windows: 'Tight storm panes or insulating shutters on the weather side come first; they cost a tenth of new windows.',
  doors: 'New seals and a sweep, then an insulated door.',
  ceiling: 'Seal the ceiling, then add insulation over the joists: the cheapest heat in the house.',
  roof: 'Insulate the slopes when they are next opened.',
  floor: 'Insulate between the floor joists and close the vents as the local code allows.',
  air: 'Seal the ceiling, the hatch and the sills before you choose the unit; test with a blower door before and after.',
};

const fuelVerdict: Readonly<Record<string, string>> = {
  narrows: ' Some houses fit both, which narrows the heat needed on the cold night.',
  contradicts: ' Hardly any house fits both, so the fuel narrows nothing.',
};

type Say = (j: Judged, print: Printer) => Words;

const carbonMonoxide =
  'Carbon monoxide kills without smell. Have a licensed technician test every flue with all fans running; fit alarms; follow the local code.';
const heatCaution =
  'Heat kills. Work in pairs and short turns, drink, stop when dizzy; follow published work and rest limits.';

const say: Readonly<Record<string, Say>> = {
  'damp-air': (j, print) => ({
    what: `With windows kept shut the air indoors is above 70 % humidity for ${print.value(j)} of the year.`,
    why: 'Damp air feeds mould on cold corners and behind furniture.',
    mend:
      j.status === 'ok'
        ? 'Nothing to do.'
        : 'Air the rooms in mild weather, run the bath and kitchen fans, dry washing outdoors; let the unit dry the air where it can.',
  }),
  morning: (j, print) => ({
    what: `Lowering the night by ${print.quantity(numberIn(j, 'setback'), 'temperature-difference')} makes the coldest morning take ${print.value(j)} more heat than an even night.`,
    why: 'The unit has to make up the night within the hour, or backup strips come on.',
    mend: j.status === 'ok' ? 'Nothing to do.' : 'Lower the night less, or let it rise over several hours.',
  }),
  'rooms-cover': (j, print) => {
    const [rooms, whole] = [numberIn(j, 'rooms'), numberIn(j, 'whole')];
    const bare = wordsIn(j, 'bare');
    return {
      what: `The rooms entered with their walls have ${print.quantity(rooms, 'area')} of floor, ${print.value(j)} of the ${print.quantity(whole, 'area')} that you answered for the house.`,
      why: 'Heat, cooling and units are worked out for these rooms alone. A unit that holds half a house leaves the rest cold.',
      mend:
        j.status === 'ok'
          ? 'Nothing to do.'
          : (j.margin ?? 0) < 0 && rooms > whole
            ? 'Measure again: a room may be entered twice, or the heated floor area on the page “First answer” is too small.'
            : `Enter the rest under Loads${bare === '' ? '' : ` (no wall, floor or ceiling yet: ${bare})`}, and decide on no unit before; or mend the heated floor area on the page “First answer”.`,
    };
  },
  'leakage-guess': (j, print) => ({
    what: `The guess about draughts alone is worth ${print.quantity(numberIn(j, 'worth'), 'power')} of heat, ${print.value(j)} of the load.`,
    why: 'It can decide between two sizes of unit, and nobody can see it.',
    mend:
      j.status === 'ok'
        ? 'Nothing to do.'
        : 'Have a blower-door test done, or rent one for an afternoon (about two hours), before you order the unit.',
  }),
  'largest-part': (j, print) => {
    const part = String(j.facts?.part);
    return {
      what: `${partNames[part] ?? 'One part'} ${part === 'walls' || part === 'windows' || part === 'doors' || part === 'ceiling' ? 'carry' : 'carries'} ${print.value(j)} of the heat away on the cold night: ${print.quantity(numberIn(j, 'heat'), 'power')}.`,
      why: 'Money spent on the largest part takes most off the load, and may buy a smaller unit.',
      mend:
        j.status === 'ok'
          ? 'No single part stands out: improve what is cheapest.'
          : (partMends[part] ?? 'Improve this part first.'),
    };
  },
  'winter-fuel': (j, print) => ({
    what: `The house as entered would have taken ${print.quantity(numberIn(j, 'computed'), 'energy')} last winter; the fuel you burned brought ${print.quantity(numberIn(j, 'burned'), 'energy')} into the rooms.${fuelVerdict[String(j.facts?.verdict)] ?? ''}`,
    why: 'Last winter is a better witness than any list of walls. Where the two disagree, one of them is wrong.',
    mend:
      j.status === 'ok' && j.facts?.verdict !== 'contradicts'
        ? 'Nothing to do: they agree.'
        : 'Check how much fuel was burned and how warm it was kept, then the draughts and the insulation, in that order.',
  }),
  'attic-heat': (j, print) => ({
    what: `On a hot afternoon the attic reaches ${print.value(j)}.`,
    why: 'You will be lifting and crawling up there.',
    mend:
      j.status === 'ok'
        ? 'Still start early.'
        : 'Plan attic work for dawn, dull days or the cool season, in turns of 20 minutes, never alone.',
    caution: heatCaution,
  }),
  'wet-glass': (j, print) => ({
    what:
      (j.margin ?? 0) >= 0
        ? `On the cold night the glass of “${j.facts?.name}” stays ${print.value(j)} above the dew point.`
        : `On the cold night the glass of “${j.facts?.name}” falls below the dew point of the room and runs wet or freezes.`,
    why: 'Water on the sill rots it, and a wet window says the room is too damp or the glass too cold.',
    mend:
      j.status === 'ok'
        ? 'Nothing to do.'
        : 'Add a tight inner or storm pane, and use the kitchen and bath fans in cold weather.',
  }),
};

/** What a statement would be about. */
const subjects: Readonly<Record<string, string>> = {
  'leakage-guess': 'What the guess about draughts is worth',
  'largest-part': 'Where most of the heat goes',
  'winter-fuel': 'Whether last winter’s fuel agrees with the house',
  'attic-heat': 'How hot the attic gets',
  'damp-air': 'How damp the air indoors gets',
  morning: 'What a lowered night costs in the morning',
  'wet-glass': 'Whether the glass runs wet',
  'learned-loss': 'What a log taught of the house’s loss',
  'learned-against': 'Whether a log agrees with the plan',
};

export function words(j: Judged, print: Printer): Words {
  const [kind = ''] = j.id.split(':');
  if (kind === 'combustion-air')
    return {
      what: 'A flue open to the rooms shares its air with the return of the heat pump. Nobody has measured yet whether it still draws.',
      why: 'A return that pulls the house below outdoor pressure can pull smoke and carbon monoxide back into the room.',
      mend: 'Keep the return out of the stove’s room, give the stove its own outdoor air, and have the draught tested at first start.',
      caution: carbonMonoxide,
    };
  if (kind === 'wet-layers') return wetLayersWords(j, print);
  if (kind === 'mould') return mouldWords(j, print);
  if (kind === 'damp-attic') return dampAtticWords(j, print);
  if (kind === 'learned-loss' && j.status !== 'unknown') return learnedLossWords(j, print);
  if (kind === 'learned-against' && j.status !== 'unknown') return learnedAgainstWords(j, print);
  if (j.status === 'unknown') {
    const subject = subjects[kind] ?? 'How much heat the house needs';
    return unknownWords(j, print, `${namedSubject(j, subject)} is not known yet.`);
  }
  const words = say[kind];
  if (!words) throw new Error(`assert: no words for the finding ${j.id}`);
  return words(j, print);
}
