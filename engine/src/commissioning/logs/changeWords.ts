import { dayText, monthNames } from '@kneewall/project';
import type { Judged, Words } from '../../plan/judge.ts';
import type { Printer } from '../../plan/printer.ts';
import type { LogAnswers } from './result.ts';

type Change = NonNullable<LogAnswers['change']>;
type What = Pick<Change, 'of' | 'by' | 'share'>;

/** “3 February 2027”, of days from 1970. */
export function dayWords(day: number): string {
  const [year = '', month = '', date = ''] = dayText(Math.round(day)).split('-');
  return `${Number(date)} ${monthNames[Number(month) - 1] ?? month} ${year}`;
}

/** “more power for the same heat”. */
export const changeOf = ({ of, by, share }: What): string =>
  `${share > 0 ? 'more' : 'less'} ${of} for the same ${by === 'heat' ? 'heat' : 'weather'}`;

/** What to look at first, as a short question. */
export const changeSuspect = ({ of, by, share }: What): string => {
  if (share < 0) return 'Something mended, or a sensor moved?';
  if (of === 'heat') return 'A window, a draught, a warmer setting?';
  return by === 'heat' ? 'The filter?' : 'The filter, or a draught?';
};

const mends = {
  unit: 'Look at the filter first: a grey one costs air and power. Then leaves, lint or ice on the outdoor coil, a setting that was changed, static pressure against the first start; and last the charge, by somebody licensed for it.',
  house:
    'Think what happened to the house about that day: a window or hatch left open, a warmer setting, a room heated again, a draught.',
  either:
    'The heat was not measured, so house and unit look alike here. Filter and outdoor coil first; then what happened to the house about that day: a window, a warmer setting, a new load behind the same meter.',
  less: 'If something was mended that day, this is what it was worth. If nothing was, look whether a sensor or a clamp was moved.',
} as const;

const mendOf = ({ of, by, share }: What): string =>
  share < 0 ? mends.less : of === 'heat' ? mends.house : by === 'heat' ? mends.unit : mends.either;

/** Words for a change in time, or for none: and then how small a one would be hidden. */
export function logChange(j: Judged, print: Printer): Words {
  const facts = j.facts ?? {};
  const found = {
    of: facts.of === 'power' ? 'power' : 'heat',
    by: facts.by === 'heat' ? 'heat' : 'weather',
    share: Number(facts.share),
  } as const;
  const size = (share: number): string => print.rounded(Math.abs(share), 'fraction');
  const of = found.of === 'power' ? 'power' : 'heat';
  if (facts.seen !== 1) {
    const least = Number(facts.least);
    return {
      what: `Nothing changed in the log “${String(facts.name)}” that chance would not show as well. A change of ${size(least)} in ${of} half way through would have shown nine times of ten; smaller ones may be hidden.`,
      why: 'Among logs in which nothing changes, one of twenty is called changed.',
      mend:
        j.status === 'ok'
          ? 'Nothing to do.'
          : `Whether ${of} rose by less than that cannot be told from this log: log on, with wind and sun, and look again.`,
    };
  }
  const [low, high] = [
    Math.min(Math.abs(Number(facts.low)), Math.abs(Number(facts.high))),
    Math.max(Math.abs(Number(facts.low)), Math.abs(Number(facts.high))),
  ];
  const whole = Number(facts.low) * Number(facts.high) > 0 ? `${size(low)} to ${size(high)}` : `up to ${size(high)}`;
  const [from, to] = [Number(facts.dayFrom), Number(facts.dayTo)];
  const between = to > from ? ` (between ${dayWords(from)} and ${dayWords(to)})` : '';
  return {
    what: `Since ${dayWords(Number(facts.day))}${between} about ${size(found.share)} ${changeOf(found)} (${whole}). ${changeSuspect(found)}`,
    why: `As strong a change shows by chance alone in ${print.rounded(Number(facts.chance), 'fraction')} of logs in which nothing changes. Nine of ten such ranges hold the truth; small changes that are found are often smaller still.`,
    mend: j.status === 'ok' ? 'Nothing to do now; look again next season.' : mendOf(found),
    ...(j.status !== 'ok' && found.of === 'power' && found.share > 0
      ? {
          caution:
            'Unit off and locked before the filter comes out. The refrigerant circuit is for whoever is licensed.',
        }
      : {}),
  };
}
