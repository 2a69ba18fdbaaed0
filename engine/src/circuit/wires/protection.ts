import type { Recorder } from '../../physics/recorder.ts';
import { disconnectSizes, standardSizes } from './tables.ts';

/** Rated currents of a unit with one compressor, A: the compressor's, and all else together. */
export type MotorCompressor = { readonly compressor: number; readonly rest: number };

/** A that the conductors must carry at least: a quarter above the compressor's. Source: `circuit.motor-compressor`. */
export function minimumAmpacity({ compressor, rest }: MotorCompressor, rec?: Recorder): number {
  const least = 1.25 * compressor + rest;
  rec?.step(
    'I_least',
    '1.25 * I_compressor + I_rest',
    { I_compressor: compressor, I_rest: rest },
    least,
    'A',
    'circuit.motor-compressor',
  );
  return least;
}

/** Protection is 1.75 times the compressor's current, up to 2.25 times where it would not start otherwise. */
export type ProtectionRule = 1.75 | 2.25;

/** A that the protection may have at most, before it is brought to a standard size. Source: `circuit.motor-compressor`. */
export function mostProtection({ compressor, rest }: MotorCompressor, rule: ProtectionRule, rec?: Recorder): number {
  const most = rule * compressor + rest;
  rec?.step(
    'I_most',
    'k * I_compressor + I_rest',
    { k: rule, I_compressor: compressor, I_rest: rest },
    most,
    'A',
    'circuit.motor-compressor',
  );
  return most;
}

/** The largest standard size that is not above `most` A, and never below 15 A. Source: `circuit.standard-sizes`. */
export const standardBelow = (most: number): number =>
  standardSizes.findLast((size) => size <= most + 1e-9) ?? (standardSizes[0] as number);

/** The smallest standard size that is not below `least` A; undefined above 100 A. */
export const standardAbove = (least: number): number | undefined => standardSizes.find((size) => size >= least - 1e-9);

/** What a disconnect for `current` A has to carry at least: 115 %. Source: `circuit.disconnect`. */
export const disconnectLeast = (current: number): number => 1.15 * current;

/** The disconnect that is sold for it, A; undefined above 200 A. */
export const disconnectSize = (current: number): number | undefined =>
  disconnectSizes.find((size) => size >= disconnectLeast(current) - 1e-9);

/** The largest ordinary protection of a thin conductor, A; undefined for thicker ones. Not for motor-compressors. Source: `circuit.small`. */
export const smallConductorProtection = (n: number): number | undefined =>
  n === 14 ? 15 : n === 12 ? 20 : n === 10 ? 30 : undefined;

/** A load that goes on for three hours counts for a quarter more. Source: `circuit.continuous`. */
export const continuousCurrent = (current: number): number => 1.25 * current;
