import { heatLimits } from '../plan/cautions.ts';
import { numberIn } from '../plan/facts.ts';
import type { Judged, Words } from '../plan/judge.ts';
import type { Printer } from '../plan/printer.ts';

type Say = (j: Judged, print: Printer) => Words;

const names: Readonly<Record<string, string>> = {
  handlerCrated: 'air handler in its crate',
  outdoorUnit: 'outdoor unit',
};
const under = 'Nobody under the load or beside its way, ever; helmet, gloves, shoes with caps.';

function carryWords(j: Judged, print: Printer): Words {
  const people = numberIn(j, 'people');
  const who = people === 1 ? 'One person' : `${people} people together`;
  return {
    what: `The ${names[String(j.facts?.piece)] ?? 'piece'} is ${print.value(j)}. ${who} may lift ${print.limit(j)} as entered.`,
    why: 'Beyond that backs are hurt, and a load that slips hurts whoever stands below.',
    mend:
      j.status === 'ok'
        ? 'On firm, level, dry ground; a trolley and straps are better still.'
        : 'More people, a trolley, straps, or a hoist; hold it closer and begin higher. Unpack it where it stands.',
    caution:
      'It holds for healthy people on their feet on firm, level ground. On ladders and stairs, kneeling, on ice or in the heat the limit is far lower. Nobody lifts alone what is above it.',
  };
}

/** What is said of lifting, platform and heat. */
export const lifts: Readonly<Record<string, Say>> = {
  carry: carryWords,
  'rope-pull': (j, print) => ({
    what: `To hoist ${print.quantity(numberIn(j, 'mass'), 'mass')} each of those at the rope pulls like ${print.value(j)}; ${print.limit(j)} is what a person keeps up.`,
    why: 'Who pulls at the end of his strength lets go.',
    mend:
      j.status === 'ok'
        ? 'A turn round a post or a brake holds it while hands change.'
        : 'More parts of rope, better sheaves, or more people at the rope.',
    caution: `${under} No rope round a hand.`,
  }),
  anchor: (j, print) => ({
    what: `What the tackle hangs from gives way at ${print.value(j)}; five times the pull on it is ${print.limit(j)}.`,
    why: `It carries the load and the pull on the rope, together more than the unit weighs, and jerks.${j.facts?.leans === undefined ? '' : ` It is pulled down and ${Math.round(numberIn(j, 'leans'))}° aside, towards whoever pulls: it must not slide or tip that way.`}`,
    mend:
      j.status === 'ok'
        ? 'Hang it over a bearing wall or several rafters; look at every knot and shackle.'
        : 'A stronger beam across several joists near their bearing, straps and sheaves rated for lifting. Ask a structural engineer.',
    caution: `${under} Roof framing is not made to be hung from: ask a structural engineer.`,
  }),
  joists: (j, print) => ({
    what: `The joist that carries most uses ${print.value(j)} of its strength: its share of the unit, a person, and the load of the attic.`,
    why: 'A joist that carries a ceiling was sized for a ceiling.',
    mend:
      j.status === 'ok'
        ? 'Stand the unit near a bearing, on a platform across as many joists as it reaches. No notches, no large holes.'
        : 'Ask a structural engineer before you order: platform over more joists, nearer a bearing, or joists beside the old ones.',
    caution:
      'A planning number for whole, dry joists of plain grade on two bearings; it knows no trusses, cracks, notches or holes. Chords of trusses carry nothing that their maker has not allowed.',
  }),
  sag: (j, print) => ({
    what: `The joists sag by ${print.value(j)}; a 240th of their span is ${print.limit(j)}.`,
    why: 'Plaster cracks, doors below bind, and the drain loses its fall.',
    mend:
      j.status === 'ok'
        ? 'Level the unit when everything stands on the platform.'
        : 'Spread it over more joists or move it towards a bearing; ask a structural engineer.',
  }),
  deck: (j) => ({
    what:
      j.status === 'ok'
        ? 'There is a fixed floor round the unit.'
        : j.facts?.answer === 'loose'
          ? 'The floor round the unit is of loose boards.'
          : 'There is no floor round the unit.',
    why: 'A loose board tips, and beside it is only a ceiling.',
    mend: j.status === 'ok' ? 'Nothing to do.' : 'Fix panels across the joists before the unit comes up.',
    caution: 'Never step between joists.',
  }),
  heat: heatWords,
};

function heatWords(j: Judged, print: Printer): Words {
  const dawn = j.facts?.time === 'dawn';
  const when = dawn ? 'At dawn of the hot day' : 'In the hot hour of the hot day';
  const none = j.value.ok && j.value.value === 0;
  const attic = print.quantity(numberIn(j, 'attic'), 'temperature');
  const index = print.quantity(numberIn(j, 'index'), 'temperature');
  return {
    what: `${when} the attic has ${attic}, an index of ${index}: ${none ? 'no work at all, stay out of it' : `${print.value(j)} of work in an hour, the rest of it where it is cool`}.`,
    why: 'Heat stroke comes while one still feels able, and kills; it makes people step beside the joist first.',
    mend:
      j.status === 'ok'
        ? 'Water within reach, somebody below, and down at the first headache.'
        : dawn
          ? 'Wait for a cooler week, or for autumn.'
          : 'Plan it for dawn, done before the sun is on the roof, or for the cold season.',
    caution: heatLimits,
  };
}
