import type { Judged, Words } from '../plan/judge.ts';
import type { Printer } from '../plan/printer.ts';
import { unknownWords } from '../plan/unknownWords.ts';

type Say = (j: Judged, print: Printer, name: string) => Words;

const number = (j: Judged, key: string): number => Number(j.facts?.[key] ?? 0);
const electric =
  'Electricity kills, and charged capacitors bite after it is off: isolate, prove dead, follow the local code, and have a licensed electrician connect it.';
const bought = (j: Judged, ifFree: string, ifBought: string): string =>
  j.facts?.bought === undefined ? ifFree : ifBought;

const say: Readonly<Record<string, Say>> = {
  'holds-night': (j, print, name) => {
    const short = Math.abs(j.margin ?? 0);
    const fails = j.status === 'fails';
    return {
      what: fails
        ? `${name} gives ${print.quantity(number(j, 'capacity'), 'power')} on the cold night with defrost counted: ${print.quantity(short, 'power')} less than the house loses.`
        : `${name} gives ${print.quantity(number(j, 'capacity'), 'power')} on the cold night with defrost counted, ${print.quantity(short, 'power')} more than the house loses.`,
      why: 'What it cannot give the stove or the generator has to, or the pipes freeze.',
      mend: fails
        ? `Seal and insulate first: that takes the load down for good. Else plan the stove for nights colder than ${j.facts?.balance === undefined ? 'the balance point' : print.quantity(number(j, 'balance'), 'temperature')}, or take a larger unit.`
        : j.status === 'tight'
          ? 'It holds on the likely figures only. Settle the largest unknowns of the load before you order.'
          : 'Nothing to do.',
    };
  },
  'stop-start': (j, print, name) => ({
    what: `${name} would stop and start in ${print.value(j)} of the heating hours, about ${print.quantity(number(j, 'hours') * 3600, 'time')} a year: the house then needs less than its lowest speed.`,
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
        ? `${name} has ${print.quantity(Math.abs(j.margin ?? 0), 'power')} of cooling to spare on the hot afternoon.`
        : `${name} is ${print.quantity(Math.abs(j.margin ?? 0), 'power')} short of the cooling the hot afternoon asks for.`,
    why: 'Short of cooling the house drifts warm for some hours; a great excess leaves it damp.',
    mend:
      (j.margin ?? 0) >= 0
        ? 'Nothing to do.'
        : 'Shade the west and south windows first; that is cheaper than a larger unit.',
  }),
  voltage: (j, print, name) => ({
    what: `${name} needs ${print.value(j)}; there are ${print.quantity(number(j, 'here'), 'voltage')}.`,
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
    what: `${name} is made for ${print.value(j)}; the supply has ${print.quantity(number(j, 'here'), 'frequency')}.`,
    why: 'Some units refuse the other frequency; some off-grid inverters raise theirs to hold back the sun.',
    mend:
      j.status === 'ok' ? 'Nothing to do.' : 'Ask the maker in writing whether this unit takes the frequency you have.',
    caution: electric,
  }),
  inverter: (j, print, name) => ({
    what: `${name} and everything else at once draw ${print.value(j)}; the inverter carries ${print.quantity(number(j, 'continuous'), 'electric-power')} without end.`,
    why: 'An inverter that trips takes the whole house down, at the worst moment.',
    mend:
      j.status === 'ok'
        ? 'Nothing to do.'
        : 'Keep the kettle and the pump from running together with the unit at its highest speed, or limit the unit’s current in its settings.',
    caution: electric,
  }),
  strips: (j, print, name) => ({
    what: `With its backup strips of ${print.quantity(number(j, 'strips'), 'electric-power')} on, ${name} and the rest draw ${print.value(j)}; the inverter carries ${print.quantity(number(j, 'continuous'), 'electric-power')}.`,
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

export function words(j: Judged, print: Printer): Words {
  const [kind = ''] = j.id.split(':');
  const name = `“${String(j.facts?.name ?? 'The unit')}”`;
  if (j.status === 'unknown')
    return unknownWords(j, print, `${name}: ${unknownSubjects[kind] ?? 'this'} is not known yet.`);
  const words = say[kind];
  if (!words) throw new Error(`assert: no words for the finding ${j.id}`);
  return words(j, print, name);
}

const unknownSubjects: Readonly<Record<string, string>> = {
  'holds-night': 'whether it holds the cold night',
  'stop-start': 'how often it stops and starts',
  'lowest-outdoor': 'how cold it may run',
  'cools-afternoon': 'whether it cools the hot afternoon',
  voltage: 'whether its voltage fits',
  phases: 'whether its phases fit',
  frequency: 'whether its frequency fits',
  inverter: 'whether the inverter carries it',
  strips: 'whether the inverter carries its strips',
  'standing-draw': 'what it draws while resting',
};
