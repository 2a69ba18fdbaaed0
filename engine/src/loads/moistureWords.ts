import { monthNames } from '@kneewall/project';
import { numberIn, wordsIn } from '../plan/facts.ts';
import type { Judged, Words } from '../plan/judge.ts';
import type { Printer } from '../plan/printer.ts';
import { unknownWords } from '../plan/unknownWords.ts';

const nameOf = (j: Judged): string => `“${j.facts?.name}”`;

const wetWhy = (j: Judged): string => `${layersSaid[String(j.facts?.layers)] ?? ''}${methodWhy}`;
const thinToThick = 'and with paint from thick, in dry rooms, to thin, in damp ones';
const layersSaid: Readonly<Record<string, string>> = {
  entered: `Counted with your layers ${thinToThick}; enter the paint as the innermost layer if you know it. `,
  chosen: `Counted with the layers that such a construction usually has ${thinToThick}; enter your own for a closer answer. `,
  kind: `Only its heat flow was entered, so it is counted with the layers that a part of its kind with that heat flow usually has ${thinToThick}; enter your own for a closer answer. `,
};
const methodWhy =
  'Water that stays rots wood and spoils insulation. The published method follows vapour through the materials alone. It leaves out moisture carried by leaking air, which is often the larger part, and water that materials soak up, rain and drying by sun and wind.';
const wetMend =
  'Open it at a hidden spot and look for stains before you close or insulate further. Seal every hole on the warm side first; then hold vapour back on the warm side, or let it out more easily on the cold side, or put insulation outside. Use the kitchen and bath fans in winter. Follow the local code on vapour retarders.';
const wetCaution =
  'Old walls and ceilings may hold asbestos, lead paint or unsafe wiring: have them tested or looked at before you open them.';

/** Where and from when water gathers, as the start of a sentence. */
function gathering(j: Judged): string {
  const month = monthNames[Number(j.facts?.month ?? 1) - 1] ?? '';
  const [inner, outer] = [wordsIn(j, 'inner'), wordsIn(j, 'outer')];
  const place = inner === outer || outer === '' ? `inside “${inner}”` : `between “${inner}” and “${outer}”`;
  return `gathers in ${nameOf(j)} ${place} from ${month} on`;
}

/** Words for water that gathers inside a construction over an ordinary year. */
export function wetLayersWords(j: Judged, print: Printer): Words {
  if (j.status === 'unknown') {
    const words = unknownWords(j, print, `Whether water gathers inside ${nameOf(j)} is not known yet.`);
    return j.because === 'out-of-range'
      ? {
          ...words,
          mend: 'Check its layers: some layer has to hold vapour back, and its heat flow has to be possible.',
        }
      : words;
  }
  const most = print.quantity(numberIn(j, 'most'), 'areal-mass');
  if (j.status === 'ok')
    return {
      what:
        j.facts?.month === undefined
          ? `Nothing condenses in ${nameOf(j)} over an ordinary year.`
          : `Some water (at most ${most}) ${gathering(j)}, and is gone again within the year.`,
      why: wetWhy(j),
      mend: 'Nothing to do but keep it tight: seal every hole on the warm side before you close it.',
    };
  const left = j.facts?.says === 'left';
  const what = left
    ? j.status === 'fails'
      ? `About ${most} of water ${gathering(j)}, and ${print.value(j)} is still there a year later: it gets wetter year by year.`
      : `In rooms of usual dampness ${nameOf(j)} dries within the year; in damp ones water ${gathering(j)} and some stays.`
    : `From dry rooms to damp ones ${print.value(j)} of water ${gathering(j)}. It dries again, but more than ${print.limit(j)} at once can run down and soak in.`;
  return { what, why: wetWhy(j), mend: wetMend, caution: wetCaution };
}

/** Words for mould on the coldest opaque surface. */
export function mouldWords(j: Judged, print: Printer): Words {
  if (j.status === 'unknown')
    return unknownWords(
      j,
      print,
      `Whether the inside of ${nameOf(j)} stays warm enough against mould is not known yet.`,
    );
  return {
    what:
      (j.margin ?? 0) >= 0
        ? `In its worst month the inside of ${nameOf(j)}, the coldest of them, stays ${print.value(j)} above the temperature at which mould grows.`
        : `In its worst month the inside of ${nameOf(j)} is cold enough for mould behind furniture and in corners.`,
    why: 'Mould needs no drop of water: air at 80 % humidity against the surface is enough. Studs, corners and leaks are colder still and are not counted, nor is moisture carried by leaking air.',
    mend:
      j.status === 'ok'
        ? 'Nothing to do.'
        : 'Insulate it, keep cupboards off it, and keep the rooms drier with the kitchen and bath fans in winter.',
  };
}

/** Words for the air at the roof deck, with the leak through the ceiling from low to high. */
export function dampAtticWords(j: Judged, print: Printer): Words {
  if (j.status === 'unknown') return unknownWords(j, print, 'How damp the roof deck gets in winter is not known yet.');
  const month = monthNames[Number(j.facts?.month ?? 1) - 1] ?? '';
  const share = (of: string): string => print.quantity(numberIn(j, of), 'fraction');
  return {
    what: `In its worst month, ${month}, the air at the roof deck stands at ${print.value(j)} humidity: from dry rooms with ${share('low')} of the leaking air going up through the ceiling to damp ones with ${share('high')}. At 100 % frost or dew gathers.`,
    why: 'Air from the rooms carries water to the cold deck; frost there drips when it thaws and rots the boards. How much air goes up is hardly ever measured, so the range is wide. The sun is counted, snow on the roof is not, nor what the wood takes up and gives back.',
    mend:
      j.status === 'ok'
        ? 'Keep the ceiling sealed.'
        : 'Seal the ceiling, the hatch and every hole for wires and ducts before you insulate or vent more, and lead fans outdoors; look for dark boards in late winter.',
  };
}
