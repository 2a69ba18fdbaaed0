import type { Given, Missing, Range } from '@kneewall/project';
import type { OwnSeason } from '../../equipment/result.ts';
import type { Scenario } from '../../plan/scenario.ts';

const givenOf = (path: string, { low, likely, high }: Range): Given => ({
  path,
  kind: 'number',
  known: 'estimated',
  low,
  likely,
  high,
});

/** How much more or less heat the house may need than it likely does: one factor for every unit in it. */
export const heatFactor = (loss: Range | undefined, s: Scenario): number =>
  loss && loss.likely > 0
    ? s.of(givenOf('house#heat', { low: loss.low / loss.likely, likely: 1, high: loss.high / loss.likely }))
    : 1;

/** How true a data sheet may be: rating programmes allow 5 % either way. Source: `paperwork.life-cost` (from memory). */
const sheet = { low: -0.05, likely: 0, high: 0.05 };

/**
 * By how much more a unit takes than with its likely seasonal figure. What moves the figures of several units (frost,
 * stopping and starting) moves them together; how true its sheet is, and what no shared input explains, is its own. Where a log
 * taught what it draws, that range stands in the place of how true the sheet may be.
 */
export function seasonFactor(id: string, { ratio }: OwnSeason, learned: Given | Missing, s: Scenario): number {
  if (!(ratio.likely > 0)) return 1;
  let moved = ratio.likely;
  let explained = 0;
  for (const d of ratio.drivers) {
    const at = s.of(givenOf(d.path, { low: -1, likely: 0, high: 1 }));
    moved += at < 0 ? d.atLow : at > 0 ? d.atHigh : 0;
    explained += Math.min(d.atLow, d.atHigh, 0) ** 2;
  }
  const rest = Math.sqrt(Math.max(0, (ratio.likely - ratio.low) ** 2 - explained));
  moved -= rest * s.of(givenOf(`candidates.${id}#beyond-sheet`, { low: 0, likely: 0, high: rest > 1e-9 ? 1 : 0 }));
  const drawn =
    'missing' in learned ? 1 + s.of(givenOf(`candidates.${id}#sheet`, sheet)) : s.of(learned) / learned.likely;
  return (ratio.likely / Math.max(moved, 0.2 * ratio.likely)) * drawn;
}
