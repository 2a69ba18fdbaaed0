import type { QuantityKind } from '@kneewall/project';
import { kindOf } from '@kneewall/project/quantity';
import type { Group } from '../coupling/asBuilt/system.ts';

/** The kind of quantity that a group of readings is. */
export const kindOfGroup: Readonly<Record<Group, QuantityKind>> = {
  pressure: 'pressure',
  'room-pressure': 'pressure',
  flow: 'flow',
  temperature: 'temperature',
  power: 'electric-power',
  water: 'volume',
  time: 'time',
};

/** Shares of what is expected beyond which no fault of the table brings a reading, and within which another unit fits. */
const beyond = { least: 1 / 8, most: 8 } as const;
const fits = { least: 0.5, most: 1.8 } as const;
const kelvin = { beyond: 22, fits: 8 } as const;

/**
 * The unit in which a reading would fit that fits in none of the ways a system fails: 0.4 held for Pa where 100 Pa is
 * expected was inches of water. Undefined where it fits as it stands, or in no unit.
 */
export function unitSuspect(group: Group, value: number, expected: number): string | undefined {
  const { unit, units } = kindOf(kindOfGroup[group]);
  const warm = group === 'temperature';
  const near = (x: number) =>
    warm ? Math.abs(x - expected) <= kelvin.fits : x / expected >= fits.least && x / expected <= fits.most;
  const far = warm
    ? Math.abs(value - expected) > kelvin.beyond
    : expected > 0 && value > 0 && (value / expected > beyond.most || value / expected < beyond.least);
  if (!far) return undefined;
  return units.find((u) => u.symbol !== unit && near(value * u.factor + (u.offset ?? 0)))?.symbol;
}
