import { electric } from '../plan/cautions.ts';
import { numberIn, wordsIn } from '../plan/facts.ts';
import type { Judged, Words } from '../plan/judge.ts';
import type { Printer } from '../plan/printer.ts';
import { unknownWords } from '../plan/unknownWords.ts';

type Say = (j: Judged, print: Printer, name: string) => Words;

const bought = (j: Judged, ifFree: string, ifBought: string): string =>
  j.facts?.bought === undefined ? ifFree : ifBought;

const say: Readonly<Record<string, Say>> = {
  'holds-night': (j, print, name) => {
    const short = Math.abs(j.margin ?? 0);
    const fails = j.status === 'fails';
    return {
      what: fails
        ? `${name} gives ${print.quantity(numberIn(j, 'capacity'), 'power')} on the cold night with defrost counted: ${print.quantity(short, 'power')} less than the house loses.`
        : `${name} gives ${print.quantity(numberIn(j, 'capacity'), 'power')} on the cold night with defrost counted, ${print.quantity(short, 'power')} more than the house loses.`,
      why: 'What it cannot give the stove or the generator has to, or the pipes freeze.',
      mend: fails
        ? `Seal and insulate first: that takes the load down for good. Else plan the stove for nights colder than ${j.facts?.balance === undefined ? 'the balance point' : print.quantity(numberIn(j, 'balance'), 'temperature')}, or take a larger unit.`
        : j.status === 'tight'
          ? 'It holds on the likely figures only. Settle the largest unknowns of the load before you order.'
          : 'Nothing to do here; what reaches the rooms is judged with the ducts.',
    };
  },
  'stop-start': (j, print, name) => ({
    what: `${name} would stop and start in ${print.value(j)} of the heating hours, about ${print.quantity(numberIn(j, 'hours') * 3600, 'time')} a year: the house then needs less than its lowest speed.`,
    why: 'Short runs waste heat, dry the air badly in summer and wear the compressor.',
    mend:
      j.status === 'ok'
        ? 'Nothing to do.'
        : bought(
            j,
            'Look for a unit with a lower continuous speed, or one size smaller.',
            'It is bought: give the thermostat a wide band, keep the inner doors open, and let it run at its lowest speed as long as it will.',
          ),
  }),
  'learned-power': (j, print, name) => ({
    what: `${name} is planned to draw ${print.value(j)} of what its sheet says when it heats: the log “${String(j.facts?.log)}” taught that. Its heat stays that of the sheet.`,
    why: 'Bills, battery and generator follow what it really draws. A log of a unit that runs as slowly as it may does not tell its most.',
    mend:
      j.status === 'ok'
        ? 'Nothing to do. On the page of commissioning it can be taken back in one step.'
        : 'So much more has a reason: filter, coil, charge, static pressure. Mend that first, log again, then plan with it.',
  }),
  helped: (j, print, name) => ({
    what:
      numberIn(j, 'hours') < 1 && j.status === 'ok'
        ? `${name} holds the house through every hour of an ordinary year.`
        : `${name} needs help in ${print.value(j)} of the heating hours, about ${print.quantity(numberIn(j, 'hours') * 3600, 'time')} a year: the house then loses more than it gives.`,
    why: 'In those hours the stove or the backup carries the rest, or the house cools down.',
    mend: j.status === 'ok' ? 'Nothing to do.' : 'Seal and insulate first, or keep the stove and count its wood.',
  }),
  'own-year': (j, print, name) => ({
    what: `${name} gives ${ratioWords(j, print)} over a year in this house, ${print.value(j)} of the published figure, ${publishedWords(j, print)}.${coolingWords(j, print)}`,
    why: `${whyDifferent(j, print)} A rating tells units apart; the bills follow the house’s own year.`,
    mend:
      j.status === 'ok'
        ? 'Nothing to do.'
        : 'Plan money and generator hours on the figure of this house. Look first at what it says above: a smaller unit stops less, a tighter house needs less in the cold.',
  }),
  'muggy-day': (j, print, name) => ({
    what: `On a muggy day ${name} takes ${print.quantity(numberIn(j, 'taken'), 'power')} of moisture’s heat out of the air; ${print.quantity(numberIn(j, 'needed'), 'power')} come in${numberIn(j, 'brought') < 1 ? '' : `, ${print.quantity(numberIn(j, 'brought'), 'power')} of it through leaks of the return`}.`,
    why: 'A unit that is large for the day runs cold too seldom to dry the air: clammy rooms, and mould in corners.',
    mend:
      j.status === 'ok'
        ? 'Nothing to do.'
        : bought(
            j,
            'A smaller unit, or one that turns its air down with its compressor, dries better. A separate dehumidifier does it too.',
            'It is bought: set the fan to follow the compressor, choose the lowest airflow the maker allows, and keep a dehumidifier for such days.',
          ),
  }),
  'data-gaps': (j, print, name) => ({
    what:
      gapsIn(j).length === 0
        ? `The data sheet of ${name} holds all the rows that the answers need.`
        : `The data sheet of ${name} leaves something open: ${gapsIn(j)
            .map((g) => gapWords[g]?.(j, print) ?? g)
            .join('; ')}.`,
    why: 'What a sheet does not say is carried as a range or left unknown, never made up.',
    mend:
      gapsIn(j).length === 0
        ? 'Nothing to do.'
        : 'Ask the seller for the engineering data of this very pair of units and put the missing rows in. If they will not give them, that is an answer too.',
  }),
  'lowest-outdoor': (j, print, name) => ({
    what:
      (j.margin ?? 0) >= 0
        ? `The cold night is ${print.value(j)} above the lowest temperature ${name} is made for.`
        : `The cold night is below the lowest temperature ${name} is made for.`,
    why: 'Below that it stops, on the very night it is needed.',
    mend:
      j.status === 'ok'
        ? 'Nothing to do.'
        : 'Keep another heater ready for such nights, or choose a unit made for colder weather.',
  }),
  'cools-afternoon': (j, print, name) => ({
    what:
      (j.margin ?? 0) >= 0
        ? `${name} has ${print.quantity(Math.abs(j.margin ?? 0), 'power')} of cooling to spare on the hot afternoon, before the ducts take theirs.`
        : `${name} is ${print.quantity(Math.abs(j.margin ?? 0), 'power')} short of the cooling the hot afternoon asks for.`,
    why: 'Short of cooling the house drifts warm for some hours; a great excess leaves it damp.',
    mend:
      (j.margin ?? 0) >= 0
        ? 'Nothing to do here; what reaches the rooms is judged with the ducts.'
        : 'Shade the west and south windows first; that is cheaper than a larger unit.',
  }),
  voltage: (j, print, name) => ({
    what: `${name} needs ${print.value(j)}; there are ${print.quantity(numberIn(j, 'here'), 'voltage')}.`,
    why: 'At the wrong voltage it does not run, or it burns.',
    mend:
      j.status === 'ok'
        ? 'Nothing to do.'
        : 'Choose a unit for the voltage you have, or ask a licensed electrician what a second inverter or a transformer would take.',
    caution: electric,
  }),
  phases: (j, print, name) => ({
    what: `${name} needs ${print.value(j)} ${j.value.ok && j.value.value === 1 ? 'phase' : 'phases'}.`,
    why: 'A three-phase unit cannot run on a single-phase supply.',
    mend: j.status === 'ok' ? 'Nothing to do.' : 'Choose the single-phase version of this unit.',
    caution: electric,
  }),
  frequency: (j, print, name) => ({
    what: `${name} is made for ${print.value(j)}; the supply has ${print.quantity(numberIn(j, 'here'), 'frequency')}.`,
    why: 'Some units refuse the other frequency; some off-grid inverters raise theirs to hold back the sun.',
    mend:
      j.status === 'ok' ? 'Nothing to do.' : 'Ask the maker in writing whether this unit takes the frequency you have.',
    caution: electric,
  }),
  inverter: (j, print, name) => ({
    what: `${name} and everything else at once draw ${print.value(j)}; the inverter carries ${print.quantity(numberIn(j, 'continuous'), 'electric-power')} without end.`,
    why: 'An inverter that trips takes the whole house down, at the worst moment.',
    mend:
      j.status === 'ok'
        ? 'Nothing to do.'
        : 'Keep the kettle and the pump from running together with the unit at its highest speed, or limit the unit’s current in its settings.',
    caution: electric,
  }),
  strips: (j, print, name) => ({
    what: `With its backup strips of ${print.quantity(numberIn(j, 'strips'), 'electric-power')} on, ${name} and the rest draw ${print.value(j)}; the inverter carries ${print.quantity(numberIn(j, 'continuous'), 'electric-power')}.`,
    why: 'Many units switch the strips on in defrost without asking. That trips or overheats an inverter.',
    mend:
      j.status === 'ok'
        ? 'Nothing to do.'
        : 'Leave the strips out or unconnected, and lock them out in the settings before the first start.',
    caution: electric,
  }),
  'standing-draw': (j, print, name) => ({
    what: `${name} draws ${print.value(j)} a day without heating anything: electronics, crankcase and pan heaters.`,
    why: 'On a battery this goes on through every dull day of December.',
    mend:
      j.status === 'ok'
        ? 'Nothing to do.'
        : 'Put the pan heater on its own thermostat and ask whether the crankcase heater may follow the weather.',
  }),
};

const listIn = (j: Judged, key: string): string[] =>
  wordsIn(j, key)
    .split(';')
    .filter((x) => x !== '');
const gapsIn = (j: Judged): string[] => listIn(j, 'gaps');

const gapWords: Readonly<Record<string, (j: Judged, print: Printer) => string>> = {
  least: () => 'no heating row at the lowest speed, so nobody can say how often it stops and starts',
  cold: () => 'heating at the highest speed is not stated, or not for a night as cold as yours',
  hot: () => 'cooling at the highest speed is not stated, or not for an afternoon as hot as yours',
  odd: () => 'rows that cannot be: less heat than electricity, or more efficient in colder air; read them again',
  coil: () => 'no cooling row with wet bulb, airflow and sensible share that agree, so how it dries is a wide guess',
  blower: () => 'the blower’s table has no powers, so its heat is left out',
  tests: (j, print) => `no published figure can be worked out without ${rowsWords(j, print)}`,
};

const speedWords: Readonly<Record<string, string>> = {
  least: 'lowest speed',
  between: 'the tests’ intermediate speed',
  rated: 'rated speed',
  most: 'highest speed',
};

/** The missing rows by name: `heating at lowest speed, 62 °F`. */
function rowsWords(j: Judged, print: Printer): string {
  const rows = listIn(j, 'missing').map((code) => {
    const [mode = '', speed = '', outdoor = '0'] = code.split(' ');
    return `${mode} at ${speedWords[speed] ?? speed}, ${print.quantity(Number(outdoor), 'temperature')}`;
  });
  return rows.join('; ');
}

const ratioWords = (j: Judged, print: Printer): string =>
  `${print.quantity(numberIn(j, 'own'), 'number')} of heat for one of electricity`;

const publishedWords = (j: Judged, print: Printer): string =>
  j.facts?.by === 'us'
    ? `${print.quantity(numberIn(j, 'rated'), 'number')} (${print.quantity(numberIn(j, 'hspf'), 'number')} Btu/Wh by the US bins of region IV)`
    : `${print.quantity(numberIn(j, 'rated'), 'number')} (by the European bins, average climate)`;

const coolingWords = (j: Judged, print: Printer): string =>
  j.facts?.seer === undefined
    ? ''
    : ` Its published cooling figure is ${print.quantity(numberIn(j, 'seer'), 'number')} Btu/Wh.`;

/** What sets the two seasons apart, the largest first; differences too small to matter are left out. */
function whyDifferent(j: Judged, print: Printer): string {
  const points = (key: string): string => print.quantity(Math.abs(numberIn(j, key)), 'fraction');
  const degrees = print.quantity(Math.abs(numberIn(j, 'colder')), 'temperature-difference');
  const said: readonly (readonly [number, string])[] = [
    [
      // A degree colder costs about a fortieth of the figure.
      Math.abs(numberIn(j, 'colder')) / 40,
      `its heat is needed in air ${degrees} ${numberIn(j, 'colder') > 0 ? 'colder' : 'milder'} than the rating has it`,
    ],
    [
      Math.abs(numberIn(j, 'cycling')),
      `${points('cycling')} ${numberIn(j, 'cycling') > 0 ? 'more' : 'less'} of the heat comes while it stops and starts`,
    ],
    [
      Math.abs(numberIn(j, 'backup')) * 3,
      `${points('backup')} ${numberIn(j, 'backup') > 0 ? 'more' : 'less'} of the heat comes from backup`,
    ],
    [numberIn(j, 'thin'), `thin air takes ${points('thin')} of its capacity`],
  ];
  const telling = said.filter(([weight]) => weight > 0.02).sort((a, b) => b[0] - a[0]);
  return telling.length === 0
    ? 'The house’s year is much like that of the rating.'
    : `Why they differ: ${telling.map(([, text]) => text).join('; ')}.`;
}

/** An own year without a published figure to hold it against is still worth saying. */
function ownYearAlone(j: Judged, print: Printer, name: string): Words | undefined {
  if (j.because !== 'missing' || j.facts?.own === undefined || j.facts.rated !== undefined) return undefined;
  return {
    what: `${name} gives about ${ratioWords(j, print)} over a year in this house. There is no published figure to hold that against.`,
    why: 'A published figure is worked out from the tests’ own rows, and the sheet does not state them all.',
    mend: `Ask for: ${rowsWords(j, print)}.`,
  };
}

export function words(j: Judged, print: Printer): Words {
  const [kind = ''] = j.id.split(':');
  const name = `“${String(j.facts?.name ?? 'The unit')}”`;
  const alone = kind === 'own-year' ? ownYearAlone(j, print, name) : undefined;
  if (alone) return alone;
  if (j.status === 'unknown')
    return unknownWords(j, print, `${name}: ${unknownSubjects[kind] ?? 'this'} is not known yet.`);
  const words = say[kind];
  if (!words) throw new Error(`assert: no words for the finding ${j.id}`);
  return words(j, print, name);
}

const unknownSubjects: Readonly<Record<string, string>> = {
  'holds-night': 'whether it holds the cold night',
  'stop-start': 'how often it stops and starts',
  helped: 'how often it needs help',
  'own-year': 'what it gives over a year',
  'muggy-day': 'whether it dries the air on a muggy day',
  'data-gaps': 'what its data sheet leaves open',
  'lowest-outdoor': 'how cold it may run',
  'cools-afternoon': 'whether it cools the hot afternoon',
  voltage: 'whether its voltage fits',
  phases: 'whether its phases fit',
  frequency: 'whether its frequency fits',
  inverter: 'whether the inverter carries it',
  strips: 'whether the inverter carries its strips',
  'standing-draw': 'what it draws while resting',
};
