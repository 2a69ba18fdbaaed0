import { electric } from '../plan/cautions.ts';
import { numberIn } from '../plan/facts.ts';
import type { Judged, Words } from '../plan/judge.ts';
import type { Printer } from '../plan/printer.ts';
import { unknownWords } from '../plan/unknownWords.ts';
import { sizeName } from './sizeName.ts';

type Say = (j: Judged, print: Printer, where: string) => Words;

const has = (j: Judged, key: string): boolean => j.facts?.[key] !== undefined;
const amps = (print: Printer, x: number): string => print.quantity(x, 'current');
const watts = (print: Printer, x: number): string => print.quantity(x, 'electric-power');
/** `10 AWG`, and mm² beside it where those are used. */
function sizeWords(print: Printer, area: number): string {
  const name = sizeName(area);
  return print.system === 'us' || name.endsWith('mm²') ? name : `${name} (${print.quantity(area, 'wire-size')})`;
}
const conductorWords = (j: Judged, print: Printer): string => sizeWords(print, numberIn(j, 'area'));
const pipeWords = (j: Judged, print: Printer): string => {
  const inside = `${print.quantity(numberIn(j, 'pipe'), 'length')} inside`;
  return has(j, 'name') ? `${String(j.facts?.name)} in tubing (${inside})` : `a conduit of ${inside}`;
};
/** The space that has to stay free before a disconnect. From memory: NEC 110.26. */
const spaceWords = (print: Printer): string =>
  `${print.quantity(0.762, 'length')} wide, ${print.quantity(0.9144, 'length')} deep.`;

const say: Readonly<Record<string, Say>> = {
  wire: (j, print, where) => {
    const thin = has(j, 'thin');
    const air = print.quantity(numberIn(j, 'air'), 'temperature');
    const carries = print.value(j);
    return {
      what: thin
        ? `${conductorWords(j, print)} is thinner than anything that may feed ${where}.`
        : `${conductorWords(j, print)} of ${String(j.facts?.metal)} to ${where} carries ${carries} in air of up to ${air}; its plate asks for ${print.limit(j)} at least.`,
      why: 'Wire that is too thin for the heat it lies in cooks its own insulation, out of sight, and starts fires.',
      mend:
        j.status === 'ok'
          ? `${has(j, 'own') ? 'It is enough by these tables.' : 'Buy this size or thicker.'}${largerBreaker(j, print)} The plate and the local code stand above this arithmetic.`
          : 'Take thicker conductors, or keep them out of the attic and apart from other circuits.',
      caution: electric,
    };
  },
  protection: (j, print, where) => {
    const [least, most] = [amps(print, numberIn(j, 'least')), amps(print, numberIn(j, 'most'))];
    return {
      what: `The breaker or fuse to ${where}: ${print.value(j)}. Two numbers that are easily mixed up: the wires have to carry ${least} at least, the breaker may be ${most} at most.`,
      why: 'Too large a breaker lets a fault burn on; one below the wires’ figure trips on hot afternoons.',
      mend:
        j.status === 'ok'
          ? `${j.facts?.by === 'nameplate' ? 'Read both figures off the plate once more when the unit arrives.' : 'Worked out from rated currents: read the plate when the unit arrives, what it prints governs.'}`
          : `Take a standard size between the two figures, never above ${most}.`,
      caution: electric,
    };
  },
  drop: (j, print, where) => ({
    what: `The wires to ${where} (${conductorWords(j, print)}, ${print.quantity(numberIn(j, 'length'), 'length')} one way) lose ${print.quantity(numberIn(j, 'volts'), 'voltage-difference')} of the voltage, ${print.value(j)}, at ${amps(print, numberIn(j, 'current'))}; ${print.limit(j)} is the limit set.`,
    why:
      j.facts?.currentBy === 'ampacity'
        ? 'Low voltage overheats motors and trips electronics. The current is the plate’s least ampacity, more than ever flows, so this is the worst of it.'
        : 'Low voltage overheats motors and trips electronics.',
    mend:
      j.status === 'ok'
        ? 'Nothing to do.'
        : 'Take thicker conductors and a thicker ground with them, or a shorter way.',
    caution: electric,
  }),
  starting: (j, print, where) => ({
    what: `While the compressor starts the wires leave ${where} ${print.value(j)} of the voltage; panel, inverter and what feeds them take their own share on top.`,
    why: 'Below some four fifths a compressor may stall, draw its locked current and trip everything.',
    mend: j.status === 'ok' ? 'Nothing to do.' : 'Ask the maker about a soft starter; take thicker conductors.',
    caution: electric,
  }),
  ground: (j, print, where) => ({
    what: `The grounding conductor to ${where} is ${sizeWords(print, numberIn(j, 'own'))}; ${sizeWords(print, numberIn(j, 'needed'))} is needed.`,
    why: 'It has to carry a fault until the breaker opens. Too thin, it burns off and leaves the casing live.',
    mend:
      j.status === 'ok'
        ? 'Nothing to do.'
        : 'Take a thicker one. It grows with conductors that were made thicker for the voltage.',
    caution: electric,
  }),
  code: (j) => ({
    what: `“${String(j.facts?.code)}” is the code that decides here. The tables of this plan are those of the NEC of 2023.`,
    why: 'Editions differ in sizes, outlets, protection of people and who may connect; what is right elsewhere may be refused here.',
    mend: 'Have the electrician or the authority hold the sizes against that edition before you buy.',
    caution: electric,
  }),
  fill: (j, print, where) => ({
    what: `${numberIn(j, 'count')} conductors to ${where}, the ground among them, take ${print.value(j)} of the inside of ${pipeWords(j, print)}; ${print.limit(j)} is allowed.`,
    why: 'Wires that are forced into a full pipe lose their insulation on the way, and cannot cool.',
    mend:
      j.status === 'ok'
        ? 'Few bends, no sharp ends, and the wires pulled all at once.'
        : 'Take the next larger conduit, or a second one. Never trim insulation to make wires fit.',
    caution: electric,
  }),
  disconnect: (j, print, where) => ({
    what: has(j, 'own')
      ? `The disconnect at ${where} is made for ${print.value(j)}; ${print.limit(j)} is the least.`
      : `At ${where} a disconnect is needed, made for ${print.limit(j)} or more: ${print.value(j)} is the one sold.`,
    why: 'Whoever opens the unit must be able to switch it off there, and see that it stays off.',
    mend:
      j.status === 'ok'
        ? 'One that can be locked off, made for wet places if it hangs outdoors.'
        : 'Take a larger one.',
    caution: electric,
  }),
  'disconnect-sight': (j, print, where) => ({
    what: `The disconnect is ${print.value(j)} from ${where}; it has to be in sight and within ${print.limit(j)}.`,
    why: 'A switch that cannot be seen can be closed by someone who does not know that hands are inside.',
    mend:
      j.status === 'ok'
        ? `Keep it in plain view and readily reached, and the space before it clear: ${spaceWords(print)}`
        : 'Hang it beside the unit, not behind it.',
    caution: electric,
  }),
  'between-conductors': (j, print) => ({
    what: `The cable between the units has ${print.value(j)} conductors, the ground among them; the maker’s diagram joins ${print.limit(j)}.`,
    why: 'One conductor short is found on the last day, with the wall closed.',
    mend:
      j.status === 'ok'
        ? 'Count once more before anything is closed; a spare conductor is cheap.'
        : 'Take a cable with enough conductors before anything is closed. Never use the ground or a screen in place of one.',
    caution: electric,
  }),
  'between-length': (j, print) => ({
    what: `The cable between the units is ${print.value(j)}; the maker allows ${print.limit(j)}.`,
    why: 'Beyond that the two units lose each other’s signal now and then, and nobody finds out why.',
    mend:
      j.status === 'ok'
        ? 'One length, no splices on the way.'
        : 'Bring the units nearer, or ask the maker in writing for a longer cable.',
    caution: electric,
  }),
  'between-size': (j, print) => ({
    what: `The conductors between the units are ${sizeWords(print, numberIn(j, 'own'))}; the maker asks for ${sizeWords(print, numberIn(j, 'asked'))}.`,
    why: 'They carry the power of the air handler beside the signal.',
    mend: j.status === 'ok' ? 'Nothing to do.' : 'Take the size that the maker names.',
    caution: electric,
  }),
  'between-screened': (j) => ({
    what:
      j.status === 'ok'
        ? 'The cable between the units is screened, as the maker asks.'
        : 'The maker asks for a screened cable between the units; the one you mean to pull is not.',
    why: 'The inverter in the unit disturbs an unscreened signal.',
    mend:
      j.status === 'ok'
        ? 'Ground the screen at one end only, as the manual says.'
        : 'Take a screened cable, and keep it apart from power wires.',
    caution: electric,
  }),
  surge: (j, print) => ({
    what: `In the worst second ${unitName(j)} and the rest draw ${print.value(j)}, as another motor starts; the inverter gives ${print.limit(j)} for a few seconds.`,
    why: 'An inverter that trips on a start takes the whole house down, and may do so night after night.',
    mend:
      j.status === 'ok'
        ? 'Read on the sheet for how many seconds it gives that.'
        : 'Give the pump or the compressor a soft starter, keep the two from starting together, or take an inverter with more surge.',
    caution: electric,
  }),
  leg: (j, print) => ({
    what: `With ${unitName(j)} at full speed the busier leg carries ${print.value(j)}; each leg of the inverter gives ${print.limit(j)}.`,
    why: 'A 240 V unit takes half from each leg. Kettle, pump and fridge on the same leg overload it while the other stands idle.',
    mend:
      j.status === 'ok'
        ? 'Nothing to do.'
        : 'Have the 120 V circuits shared out between the legs, the large ones apart.',
    caution: electric,
  }),
  output: (j, print) => ({
    what: `${unitName(j)} is made for ${print.value(j)}; the inverter gives 120 V only.`,
    why: 'At half its voltage it does not run, and may burn.',
    mend:
      j.status === 'ok'
        ? 'Nothing to do.'
        : 'Choose a unit for 120 V, or ask a licensed electrician what a second inverter or a transformer would take.',
    caution: electric,
  }),
  generator: (j, print) => ({
    what: `Charging, heating with ${unitName(j)} and the rest at once ask the generator for ${print.value(j)}; it gives ${print.limit(j)} at this height, and four fifths of that for long.`,
    why: 'It runs on the darkest days, when the battery is empty and the house cold: both at once, for hours.',
    mend:
      j.status === 'ok'
        ? 'Nothing to do.'
        : numberIn(j, 'left') > 0
          ? `Set the charger to no more than ${watts(print, numberIn(j, 'left'))} while the unit heats. Then count how many more hours it runs.`
          : 'Nothing is left for charging while the unit heats at full speed: charge first and heat after, limit the unit’s speed, or take a larger set.',
    caution:
      'Exhaust kills: outdoors only, far from windows. Never feed a house without a proper transfer switch. A licensed electrician connects it.',
  }),
};

/** The trap that makes people "correct" a right breaker. */
const largerBreaker = (j: Judged, print: Printer): string =>
  j.value.ok && numberIn(j, 'protection') > lowest(j) && numberIn(j, 'protection') <= numberIn(j, 'most')
    ? ` The breaker of ${amps(print, numberIn(j, 'protection'))} is larger than that on purpose: for compressors that is the rule, as long as it stays below the plate’s maximum.`
    : '';
const lowest = (j: Judged): number =>
  j.value.ok ? (typeof j.value.value === 'number' ? j.value.value : j.value.value.low) : 0;

const unitName = (j: Judged): string => `“${String(j.facts?.name ?? 'the unit')}”`;

const places: Readonly<Record<string, string>> = { outdoor: 'the outdoor unit', handler: 'the air handler' };

const unknownSubjects: Readonly<Record<string, (where: string) => string>> = {
  wire: (where) => `Which wires ${where} needs`,
  protection: (where) => `Which breaker or fuse ${where} needs`,
  drop: (where) => `How much voltage the wires to ${where} lose`,
  starting: () => 'Whether the compressor gets enough voltage to start',
  ground: (where) => `Which ground ${where} needs`,
  disconnect: (where) => `Which disconnect ${where} needs`,
  code: () => 'Which electrical code decides here',
  fill: (where) => `Which conduit the wires to ${where} need`,
  'disconnect-sight': (where) => `Whether the disconnect is in sight of ${where}`,
  'between-conductors': () => 'Whether the cable between the units has enough conductors',
  'between-length': () => 'Whether the cable between the units is short enough',
  surge: () => 'Whether the inverter carries the worst second',
  output: () => 'Whether the inverter’s voltage suits the unit',
  leg: () => 'Whether each leg of the inverter carries its share',
  generator: () => 'Whether the generator can charge and heat at once',
};

export function words(j: Judged, print: Printer): Words {
  const [kind = '', place = ''] = j.id.split(':');
  const where = places[place] ?? 'the unit';
  if (j.status === 'unknown') return unknown(j, print, `${unknownSubjects[kind]?.(where) ?? 'This'} is not known yet.`);
  const found = say[kind];
  if (!found) throw new Error(`assert: no words for the finding ${j.id}`);
  return found(j, print, where);
}

function unknown(j: Judged, print: Printer, what: string): Words {
  const why = 'What is not known here is for a licensed electrician to settle, not to be guessed.';
  if (j.because !== 'out-of-range') return { ...unknownWords(j, print, what, why), caution: electric };
  return {
    what,
    why: 'The tables here end at 1/0 AWG, 200 A and 70 °C air.',
    mend: 'Choose a cooler way or fewer conductors side by side, or leave it to a licensed electrician.',
    caution: electric,
  };
}
