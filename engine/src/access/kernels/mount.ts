import { gravity } from './rope.ts';

/** Hz at which a unit swings on what gives `gives` m under its weight. Source: `access.mount`. */
export const ownFrequency = (gives: number): number => Math.sqrt(gravity / gives) / (2 * Math.PI);

/**
 * Share of an unbalanced blower's force that comes through to the wood, undamped: 1 where nothing gives, beyond 1 below
 * the square root of two times its own frequency, infinite at it. Hz. Source: `access.mount`.
 */
export function shakenThrough(gives: number, frequency: number): number {
  if (!(gives > 0)) return 1;
  const ratio = frequency / ownFrequency(gives);
  return 1 / Math.abs(ratio * ratio - 1);
}
