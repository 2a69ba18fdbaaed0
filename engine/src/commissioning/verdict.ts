import type { Group } from '../coupling/asBuilt/system.ts';
import { normalBelow } from '../physics/bayes/index.ts';
import { bandOf, errorOf, methods } from './methods.ts';
import type { Means } from './visit.ts';

/** A band, and how a reading stands in it. */
export type Verdict = {
  readonly word: 'good' | 'off' | 'cannot tell';
  /** Chance that the true value lies in the band. */
  readonly inBand: number;
  readonly band: { readonly min: number; readonly max: number };
  /** Standard deviation of the reading, in its unit. */
  readonly error: number;
  /** The way out: readings like this that would tell in all, or something else where no number of them would. */
  readonly way:
    | { readonly kind: 'none' }
    | { readonly kind: 'again'; readonly times: number }
    | { readonly kind: 'other' };
};

/** Chances at which a reading acquits and convicts. Source: `commissioning.verdict`. */
const goodLeast = 0.9;
const offMost = 0.085;
/** Readings below which an improvised way convicts nobody. Source: `commissioning.verdict`. */
const improvisedLeast = 3;
const timesMost = 9;

export type Read = {
  readonly group: Group;
  readonly expected: number;
  readonly value: number;
  readonly means: Means;
  readonly repeats: number;
  /** Standard deviation where it is not that of the method alone, as for shares. */
  readonly error?: number;
};

/** Whether a reading is good, off, or too rough to tell, by the chance that the true value lies in its band. */
export function verdictOf(read: Read): Verdict {
  const { group, expected, value, means, repeats } = read;
  const band = bandOf(group, expected);
  const error = read.error ?? errorOf(group, means, value, repeats);
  const inBand = chanceIn(band, value, error);
  const enough = !methods[means].improvised || repeats >= improvisedLeast;
  const word = inBand >= goodLeast ? 'good' : inBand <= offMost && enough ? 'off' : 'cannot tell';
  return { word, inBand, band, error, way: word === 'cannot tell' ? wayOut(read, band) : { kind: 'none' } };
}

const chanceIn = ({ min, max }: Verdict['band'], value: number, error: number): number =>
  error > 0
    ? normalBelow((max - value) / error) - normalBelow((min - value) / error)
    : value >= min && value <= max
      ? 1
      : 0;

/** The fewest readings in all, up to nine, after which the same value would tell. */
function wayOut({ group, value, means, repeats }: Read, band: Verdict['band']): Verdict['way'] {
  const least = methods[means].improvised ? improvisedLeast : 1;
  for (let times = Math.max(least, repeats + 1); times <= timesMost; times++) {
    const inBand = chanceIn(band, value, errorOf(group, means, value, times));
    if (inBand >= goodLeast || inBand <= offMost) return { kind: 'again', times };
  }
  return { kind: 'other' };
}
