import { numberIn } from '../plan/facts.ts';
import type { Judged, Words } from '../plan/judge.ts';
import { namedSubject } from '../plan/namedSubject.ts';
import type { Printer } from '../plan/printer.ts';
import { unknownWords } from '../plan/unknownWords.ts';
import { lineSubjects, lines } from './lineWords.ts';

type Say = (j: Judged, print: Printer) => Words;

/** Gallons, or litres, which are handier here than cubic metres. */
const litres = (j: Judged, print: Printer): string =>
  print.system === 'us'
    ? print.quantity(numberIn(j, 'litres') / 1000, 'volume')
    : `${Math.round(10 * numberIn(j, 'litres')) / 10} L`;

const say: Readonly<Record<string, Say>> = {
  'trap-room': (j, print) => {
    const [drop, seal] = [print.quantity(numberIn(j, 'drop'), 'length'), print.quantity(numberIn(j, 'seal'), 'length')];
    const pulls = numberIn(j, 'pulls') === 1;
    return {
      what: `The trap needs ${print.limit(j)} below the cabinet’s outlet, ${print.value(j)} is free: ${drop} down to its own outlet, a seal of ${seal}, and the pipe, for ${print.quantity(numberIn(j, 'pressure'), 'pressure')} of ${pulls ? 'suction' : 'pressure'} with a loaded filter.`,
      why: pulls
        ? 'Without a trap that is deep enough the blower sucks air in through the drain, and the water stays in the cabinet until it comes through the ceiling.'
        : 'Without a seal the blower pushes air out through the drain, all summer long.',
      mend:
        j.status === 'ok'
          ? 'Put clean-outs on both sides of it, and a drawing of it with its two measures beside the unit.'
          : 'Stand the unit on higher risers before it is fixed, or lead the trap down beside the joists.',
    };
  },
  vent: (j) => ({
    what:
      j.facts?.answer === 'after'
        ? 'The drain has its open vent after the trap.'
        : j.facts?.answer === 'before'
          ? 'The vent stands between cabinet and trap: there it lets air into the cabinet and the trap does nothing.'
          : 'The drain has no open vent.',
    why: 'Behind the trap water has to find air, or it runs in gulps and pulls the seal dry.',
    mend:
      j.status === 'ok'
        ? 'Its top has to stand above the rim of the pan, open.'
        : 'A tee after the trap with a short open pipe up, its top above the rim of the pan.',
  }),
  fall: (j, print) => ({
    what: `The drain loses ${print.value(j)} on its way; ${print.limit(j)} is the least.`,
    why: 'Water stands where a pipe lies level or sags; slime grows there and closes it.',
    mend:
      j.status === 'ok'
        ? 'Hang it every 1.2 m or 4 ft, so that no stretch sags below its slope.'
        : 'Raise the unit, shorten the way, end it lower, or have a pump that stops the unit when it fails.',
  }),
  pipe: (j, print) => ({
    what: `The drain is ${print.value(j)} inside; ${print.limit(j)} is the least, and never less than the outlet of the pan.${j.facts?.litres === undefined ? '' : ` At full speed up to ${litres(j, print)} an hour runs through it.`}`,
    why: 'Not the water needs the width but the slime.',
    mend:
      j.status === 'ok' ? 'The same size all the way down.' : 'Take three-quarter-inch pipe or larger, all the way.',
  }),
  'pipe-filled': (j, print) => ({
    what: `${litres(j, print)} an hour take ${print.value(j)} of what the pipe carries half full at its fall.`,
    why: 'A pipe that runs full has no air over the water.',
    mend: j.status === 'ok' ? 'Nothing to do.' : 'More fall or a larger pipe.',
  }),
  ...lines,
  second: (j) => ({
    what: {
      pan: 'When the drain stops, a pan under the unit catches the water and leads it where it is seen.',
      overflow: 'When the drain stops, a second, higher outlet leads the water where it is seen.',
      switch: 'When the drain stops, a float switch stops the unit.',
      none: 'When the drain stops, nothing keeps the water from the ceiling.',
    }[String(j.facts?.answer) as 'pan' | 'overflow' | 'switch' | 'none'],
    why: 'Every drain stops one day, in the muggiest week, above a finished ceiling.',
    mend:
      j.status === 'ok'
        ? 'A switch beside it costs little. Pour water in every spring and see that it works.'
        : 'A pan with a line of its own, a second outlet, or a float switch: the local code says which.',
  }),
  'pan-depth': (j, print) => ({
    what: `The pan is ${print.value(j)} deep; ${print.limit(j)} is the least.${j.facts?.fills === undefined ? '' : ` With both drains stopped it would run over after ${hours(numberIn(j, 'fills'))} of muggy weather at full speed.`}`,
    why: 'It is the last thing between the coil and the ceiling.',
    mend: j.status === 'ok' ? 'Lay it level, or a little low towards its outlet.' : 'Take a deeper pan.',
  }),
  'pan-larger': (j, print) => ({
    what:
      (j.margin ?? 0) + (j.limit.min ?? 0) < 0
        ? `The pan is ${print.quantity(-((j.margin ?? 0) + (j.limit.min ?? 0)), 'length')} smaller than the unit in length or width; it has to reach ${print.limit(j)} beyond it.`
        : `The pan reaches ${print.value(j)} beyond the unit in length or width; ${print.limit(j)} is the least.`,
    why: 'Water runs along the casing and drips off where it likes.',
    mend:
      j.status === 'ok'
        ? 'Set the unit in its middle, on blocks above its rim.'
        : 'Take a larger pan, before the unit stands in it.',
  }),
  freezes: (j, print) => frostWords(j, print),
  ends: (j) => ({
    what: {
      ground: 'The drain ends outdoors on ground that takes the water.',
      gap: 'The drain ends over an open drain, with an air gap.',
      waste: 'The drain is joined to a waste pipe.',
      walked: 'The drain ends where people walk, on a roof, or next door.',
    }[String(j.facts?.answer) as 'ground' | 'gap' | 'waste' | 'walked'],
    why: 'Joined to a waste pipe, sewer gas comes up through a dry trap into the air of the house; on a path the water grows moss and ice.',
    mend:
      j.status === 'ok'
        ? 'Keep its end in sight and above the ground, so that a stop is noticed.'
        : 'End it over an open drain with an air gap, or on ground that takes it; the local code says where.',
    ...(j.facts?.answer === 'waste'
      ? { caution: 'Sewer gas is poisonous and burns: no drain of an air handler without an air gap.' }
      : {}),
  }),
};

const hours = (seconds: number): string => {
  const h = seconds / 3600;
  return h < 2 ? `${Math.max(1, Math.round(seconds / 60))} minutes` : `${Math.round(h)} hours`;
};

function frostWords(j: Judged, print: Printer): Words {
  const cold =
    j.facts?.cold === undefined
      ? ''
      : `${j.status === 'tight' ? ' In the colder of these' : ''} ${j.status === 'tight' ? 's' : 'S'}tanding water is down to freezing in ${hours(numberIn(j, 'cold'))}, and solid ${hours(numberIn(j, 'solid'))} later.`;
  const standing = j.facts?.standing === undefined ? '' : ` Water also stands in: ${j.facts.standing}.`;
  const winter =
    j.facts?.hours === undefined
      ? ''
      : ` The house’s own year has ${Math.round(numberIn(j, 'hours'))} hours of frost there, up to ${Math.round(numberIn(j, 'longest'))} without a break; ${Math.round(100 * numberIn(j, 'ice'))} % of what stands is then ice.`;
  return {
    what: `At its coldest trap and drain lie in air of ${print.value(j)}.${cold}${winter}${standing}`,
    why: 'In winter no water comes, but the trap stays full: it bursts, and is found in May when the ceiling is wet.',
    mend:
      j.status === 'ok'
        ? 'Nothing to do.'
        : 'Empty the trap after the last cooling day, or lay a heating cable made for drains, and enter that. Foam only delays it; a pipe that is empty and falls does not freeze.',
  };
}

const subjects: Readonly<Record<string, string>> = {
  'trap-room': 'Whether there is height enough for the trap',
  vent: 'Whether the drain is vented',
  fall: 'Whether the drain falls enough',
  pipe: 'Whether the drain is wide enough',
  'pipe-filled': 'Whether the pipe carries the water',
  second: 'What happens when the drain stops',
  'pan-depth': 'Whether the pan is deep enough',
  'pan-larger': 'Whether the pan is larger than the unit',
  freezes: 'Whether trap and drain freeze',
  ends: 'Where the drain ends',
  ...lineSubjects,
};

export function words(j: Judged, print: Printer): Words {
  const id = j.id.split(':')[0] ?? j.id;
  if (j.status === 'unknown')
    return unknownWords(
      j,
      print,
      `${namedSubject(j, subjects[id] ?? 'This')} is not known yet.`,
      'Water above a ceiling forgives no guess.',
    );
  const found = say[id];
  if (!found) throw new Error(`assert: no words for the finding ${j.id}`);
  return found(j, print);
}
