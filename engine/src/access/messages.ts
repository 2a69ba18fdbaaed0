import { numberIn, wordsIn } from '../plan/facts.ts';
import type { Judged, Words } from '../plan/judge.ts';
import { namedSubject } from '../plan/namedSubject.ts';
import type { Printer } from '../plan/printer.ts';
import { unknownWords } from '../plan/unknownWords.ts';
import { lifts } from './liftWords.ts';
import { more, moreSubjects } from './moreWords.ts';
import { cutCaution, heightPlanned, helpWords, wayPlanned } from './motionWords.ts';

type Say = (j: Judged, print: Printer) => Words;

const metres = (j: Judged, print: Printer, key: string): string => print.quantity(numberIn(j, key), 'length');
const pieceWords: Readonly<Record<string, string>> = {
  handler: 'air handler',
  handlerCrated: 'air handler in its crate',
  outdoorUnit: 'outdoor unit',
};
const endWords: Readonly<Record<string, string>> = {
  width: 'its width going first',
  depth: 'its depth going first',
  height: 'flat, its height going first',
};

const piece = (j: Judged): string => pieceWords[wordsIn(j, 'piece')] ?? 'piece';

/** What framing the smallest opening meets, laid across joists at their spacing. */
function joistWords(j: Judged): string {
  const cut = numberIn(j, 'joistsCut');
  if (wordsIn(j, 'kind') !== 'hatch') return '';
  return cut === 0
    ? ' At the spacing entered it goes between two joists.'
    : ` At the spacing entered it meets ${cut} ${cut === 1 ? 'joist' : 'joists'} at least, its short side laid across them.`;
}

function passesWords(j: Judged, print: Printer): Words {
  if (j.facts?.byPlan === 1) return wayPlanned(j, piece(j), print);
  const name = wordsIn(j, 'name');
  const face = `${metres(j, print, 'faceLong')} by ${metres(j, print, 'faceShort')}`;
  const opening = `${metres(j, print, 'openLong')} by ${metres(j, print, 'openShort')}`;
  const best = `${endWords[wordsIn(j, 'leading')]}${wordsIn(j, 'through') === 'turned' ? ' and turned in the opening' : ''}`;
  const likely = j.value.ok ? (typeof j.value.value === 'number' ? j.value.value : j.value.value.likely) : 0;
  const why = 'The maker takes back no unit that was opened, and a frame cut in haste is a roof cut in haste.';
  if (j.status !== 'fails')
    return {
      what: `${name}: the ${piece(j)} passes with ${print.value(j)} to spare, ${best}.`,
      why,
      mend:
        j.status === 'tight'
          ? 'Too little to count on. Measure the narrowest place again, corner to corner too, and try with a frame of cardboard.'
          : wordsIn(j, 'crate') === 'unpack'
            ? 'It does not pass in its crate: unpack it below, keep the foam and its covers on.'
            : 'Try it with a frame of cardboard before you order.',
    };
  return {
    what: `${name}: the ${piece(j)} does not pass. Its smallest face is ${face}, the opening ${opening}; ${print.quantity(Math.max(0, -likely), 'length')} are lacking.`,
    why: `${numberIn(j, 'never') === 1 ? 'No way of turning it helps: that is proved.' : 'No face of it goes in. Whether it could be twisted through is not ruled out; do not count on it.'} ${why}`,
    mend: `An opening of ${metres(j, print, 'smallLong')} by ${metres(j, print, 'smallShort')} in the clear would do; or look for a unit that comes apart. Joists, trusses and rafters are not cut without an engineer; a hatch between trusses may be as wide as their spacing and no wider.${joistWords(j)}${helpWords(j)}`,
    caution: cutCaution,
  };
}

const say: Readonly<Record<string, Say>> = {
  passes: passesWords,
  headroom: (j, print) =>
    j.facts?.byPlan === 1
      ? heightPlanned(j, piece(j), print)
      : {
          what: `${wordsIn(j, 'name')}: ${print.value(j)} is free above it; ${print.limit(j)} is enough to bring the ${piece(j)} up and lay it down.`,
          why: 'A box that came up through a hole has to be tipped over, and tipped it stands taller than it is long.',
          mend:
            j.status === 'ok'
              ? 'Measure where the roof is lowest over the opening, not at the ridge.'
              : 'The piece cannot even lie there. Look for another way in.',
        },
  opening: (j, print) => ({
    what:
      j.status === 'fails'
        ? `${wordsIn(j, 'name')} is smaller than the ${metres(j, print, 'short')} by ${metres(j, print, 'long')} that codes commonly ask for an appliance in an attic.`
        : `${wordsIn(j, 'name')} is at least the ${metres(j, print, 'short')} by ${metres(j, print, 'long')} that codes commonly ask.`,
    why: 'Whoever repairs the unit comes in here, and it goes out here.',
    mend:
      j.status === 'fails'
        ? 'Ask the local code; it may ask for more than this. It must also let the largest piece out.'
        : 'The local code decides; it must also let the largest piece out.',
  }),
  'way-size': (j, print) => ({
    what: `${wordsIn(j, 'name')} ${j.status === 'fails' ? 'is narrower or lower than' : 'keeps'} the ${metres(j, print, 'short')} by ${metres(j, print, 'long')} that codes commonly ask of a way to a unit.`,
    why: 'Somebody with tools has to get there, and out again when something goes wrong.',
    mend: j.status === 'ok' ? 'Keep ducts and wires out of it.' : 'Lead ducts around it, or stand the unit nearer.',
  }),
  'way-length': (j, print) => ({
    what: `${wordsIn(j, 'name')} is ${print.value(j)} long; codes commonly allow ${print.limit(j)} where one cannot walk upright.`,
    why: 'A long crawl is a long way out.',
    mend: j.status === 'ok' ? 'Nothing to do.' : 'Stand the unit nearer, or make another opening.',
  }),
  'way-floor': (j, print) => ({
    what: `${wordsIn(j, 'name')}: its solid floor is ${print.value(j)} wide; codes commonly ask ${print.limit(j)}.`,
    why: 'Between joists there is only a ceiling.',
    mend:
      j.status === 'ok'
        ? 'Fix it down; loose boards tip.'
        : 'Fix panels or boards across the joists before anything is carried.',
    caution: 'A foot between two joists goes through the ceiling, and the person after it.',
  }),
  'service-space': (j, print) => ({
    what: `${print.value(j)} of free floor at the unit; codes commonly ask ${print.limit(j)} each way where it is served.`,
    why: 'Filter, board and coil come out on that side.',
    mend: j.status === 'ok' ? 'Keep it free.' : 'Turn the unit or move it, before the ducts are cut.',
  }),
  light: (j) => ({
    what: j.status === 'ok' ? 'A light at the unit is switched at the opening.' : 'There is no light at the unit.',
    why: 'In the dark one steps between joists and touches what is live.',
    mend:
      j.status === 'ok' ? 'Nothing to do.' : 'A light there, with its switch at the opening, as the local code asks.',
    ...(j.status === 'ok' ? {} : { caution: 'Wiring is for whoever the local code lets do it.' }),
  }),
  receptacle: (j) => ({
    what: j.status === 'ok' ? 'There is a receptacle near the unit.' : 'There is no receptacle near the unit.',
    why: 'Repairs need a pump and a lamp; a cord through the hatch is in everybody’s way.',
    mend: j.status === 'ok' ? 'Nothing to do.' : 'One near the unit, as the local code asks.',
  }),
  ...lifts,
  ...more,
};

const subjects: Readonly<Record<string, string>> = {
  opening: 'Whether the opening is as large as codes ask',
  'way-size': 'Whether the way is as wide and high as codes ask',
  'way-length': 'Whether the way is short enough',
  'way-floor': 'Whether the way has a floor',
  'service-space': 'Whether there is room to work at the unit',
  light: 'Whether there is light at the unit',
  receptacle: 'Whether there is a receptacle near the unit',
  raise: 'How it goes up',
  'rope-pull': 'How hard the rope is pulled',
  anchor: 'Whether what the tackle hangs from holds',
  joists: 'Whether the joists carry the unit',
  sag: 'How far the joists sag',
  deck: 'Whether there is a floor round the unit',
  heat: 'How long people can work in the attic',
  ...moreSubjects,
};

/** What would be said, and of which piece or place. */
function subjectOf(j: Judged, id: string): string {
  if (id === 'passes') return `Whether the ${piece(j)} passes “${wordsIn(j, 'name')}”`;
  if (id === 'carry') return `Whether the ${piece(j)} can be carried by hand`;
  if (id === 'headroom') return `Whether there is height enough above “${wordsIn(j, 'name')}” for the ${piece(j)}`;
  return namedSubject(j, subjects[id] ?? 'This');
}

/** Statements that nothing can be said about because no rule reaches there. */
const beyond: Readonly<Record<string, Say>> = {
  passes: (j) => ({
    what: `Whether the ${piece(j)} passes “${wordsIn(j, 'name')}” cannot be told.`,
    why: 'Planning found no way, and no proof that there is none.',
    mend: 'Measure the narrowest place again, to the nearest 2 mm, and try it with a frame of cardboard before you order.',
  }),
  mounts: () => ({
    what: 'At one of the blower’s speeds pads or springs shake with it instead of holding it off.',
    why: 'At the pace at which the unit swings by itself on them every turn of the blower adds to the last.',
    mend: 'Mounts that give more under its weight, or rubber that gives next to nothing; compare their sheets.',
  }),
  carry: (j) => ({
    what:
      wordsIn(j, 'pose') === 'kneeling' || wordsIn(j, 'pose') === 'crawling'
        ? 'People who kneel or crawl are outside the lifting equation: no limit is claimed.'
        : 'The lifting equation gives no limit for a lift as entered.',
    why: 'It is for people on their feet, ends at hands 63 cm in front of the ankles, and at lifts of 175 cm; beyond it nothing is safe to promise.',
    mend: 'Slide it on boards or a sheet of panel, with a strap to pull it; hold it closer, lift it in two steps, or let a trolley or hoist do it. Look at the people and measures entered.',
    caution: 'Nobody lifts alone what is above the limit of one.',
  }),
  headroom: (j, print) => ({
    what: `${wordsIn(j, 'name')}: whether the ${piece(j)} can be tipped under that roof was neither shown nor ruled out; ${metres(j, print, 'enough')} above the hatch is surely enough.`,
    why: 'It is so tight that neither a way nor a proof against one was found; no tape is that good.',
    mend: 'Build a frame of its size from cardboard and laths and take that up first.',
  }),
  raise: (j, print) => ({
    what: `The unit of ${print.quantity(numberIn(j, 'mass'), 'mass')} is to go up ${{ hands: 'through the opening by hand', ladder: 'a ladder', stair: 'a stair' }[wordsIn(j, 'up')] ?? 'by hand'}. The lifting equation does not cover that, so nothing here says it is safe.${j.facts?.below === undefined ? '' : ` On that stair the lower of two carries ${print.quantity(numberIn(j, 'below'), 'mass')} of it.`}`,
    why: 'On a ladder one hand belongs to the ladder; overhead, kneeling, on steps or in the heat people lift far less than on firm ground.',
    mend: 'Hoist it by rope and sheaves from an anchor that is known, or have movers do it.',
    caution: 'Falls kill: nobody carries a unit up a ladder, and nobody stands under it.',
  }),
};

export function words(j: Judged, print: Printer): Words {
  const id = j.id.split(':')[0] ?? j.id;
  if (j.status === 'unknown') {
    const special = j.because === 'out-of-range' ? beyond[id] : undefined;
    if (special) return special(j, print);
    return unknownWords(j, print, `${subjectOf(j, id)} is not known yet.`, 'A tape and the data sheet tell.');
  }
  const found = say[id];
  if (!found) throw new Error(`assert: no words for the finding ${j.id}`);
  return found(j, print);
}
