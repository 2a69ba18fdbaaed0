import type { Winter } from '@kneewall/engine';

export type Way = {
  readonly key: 'holding' | 'stopStart' | 'helped' | 'beyond';
  readonly word: string;
  /** The look of the ribbon's piece. */
  readonly mark: string;
  readonly hours: number;
};

/** How a unit runs through a winter, in the order in which the ribbon stacks it; what never happens is left out. */
export function waysOf({ bins, lowestKnown }: Winter): Way[] {
  const words: readonly (readonly [Way['key'], string])[] = [
    ['holding', lowestKnown ? 'runs steadily' : 'steady or stop and start, its sheet does not say'],
    ['stopStart', 'stops and starts'],
    ['helped', 'needs help'],
    ['beyond', 'colder than its sheet goes'],
  ];
  return words
    .map(([key, word]): Way => ({ key, word, mark: key, hours: bins.reduce((sum, b) => sum + b[key], 0) }))
    .filter(({ hours }) => hours > 0);
}

/** One sentence on what living with it would be like, from its hours; nothing where its winter has none. */
export function feelOf(winter: Winter, temperature: (t: number) => string): string | undefined {
  const sum = (key: Way['key']) => winter.bins.reduce((total, b) => total + b[key], 0);
  const [holding, stopping, helped, beyond] = [sum('holding'), sum('stopStart'), sum('helped'), sum('beyond')];
  const whole = holding + stopping + helped + beyond;
  if (whole === 0) return undefined;
  const cold = coldWords(winter, helped, temperature);
  if (!winter.lowestKnown) return `Nobody can tell from its sheet how often it would stop and start; ${cold}.`;
  return `${steadyWords(stopping / whole)}; ${cold}.`;
}

/** Words for the share of heating hours in which it stops and starts. Limits: common practice, no source. */
function steadyWords(share: number): string {
  if (share < 0.15) return 'Low, even warmth for hours on end, and seldom a start to be heard';
  if (share < 0.4)
    return 'Even warmth in real cold; on mild days it comes and goes, a gust of warm air and then a pause';
  return 'Much coming and going: warm gusts and pauses for most of the milder season, and rooms that swing a little';
}

function coldWords(winter: Winter, helped: number, temperature: (t: number) => string): string {
  if (helped < 1) return 'on the coldest nights of an ordinary year it holds by itself';
  const warmest = winter.bins.findLast((b) => b.helped > 0)?.from ?? 0;
  const hours = Math.round(helped);
  return `for ${hours} ${hours === 1 ? 'hour' : 'hours'} a year, all below ${temperature(warmest + winter.width)}, the stove or the backup has to help`;
}
