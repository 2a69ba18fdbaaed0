import type { PartId } from './element.ts';
import type { LoadPart } from './result.ts';

/** What carries the heat, in words. */
export const partTitle: Readonly<Record<PartId, string>> = {
  walls: 'Walls',
  windows: 'Windows',
  doors: 'Doors',
  ceiling: 'Ceiling',
  roof: 'Roof',
  floor: 'Floor',
  air: 'Leaking air',
  sun: 'Sun',
  people: 'People',
  appliances: 'Appliances',
};

export type PartShare = { readonly part: PartId; readonly heat: number; readonly share: number };

/** Equal parts summed, largest first, each as a share of what is positive. */
export function partShares(parts: readonly LoadPart[]): PartShare[] {
  const sums = new Map<PartId, number>();
  for (const { part, heat } of parts) sums.set(part, (sums.get(part) ?? 0) + heat);
  const whole = [...sums.values()].reduce((n, heat) => n + Math.max(0, heat), 0);
  return [...sums]
    .map(([part, heat]) => ({ part, heat, share: whole > 0 ? Math.max(0, heat) / whole : 0 }))
    .filter(({ heat }) => Math.abs(heat) >= 1)
    .sort((a, b) => b.heat - a.heat);
}
