import { effectColumns, effectLines, type Plan, printerFor } from '@kneewall/engine';
import type { System } from '@kneewall/project';
import { type Block, bold, part, table } from '../block.ts';
import { signOf } from '../signs.ts';

/** What of logs the plan is scaled by, and its main numbers before and after; nothing where nothing of it is known. */
export function takenBlocks(plan: Plan, units: System): Block[] {
  const said = plan.findings.filter(
    (f) =>
      f.id.startsWith('loads/learned-') ||
      f.id.startsWith('equipment/learned-power') ||
      f.id === 'offgrid/learned-household',
  );
  if (said.length === 0) return effectBlocks(plan, units);
  return [
    part('What of it is in the plan'),
    table(
      [
        { head: 'Stands', width: 62 },
        { head: 'What was taken from a log', width: '*' },
        { head: 'What it asks for', width: 170 },
      ],
      said.map((f) => [bold(signOf(f.status)), f.what, f.mend]),
    ),
    ...effectBlocks(plan, units),
  ];
}

function effectBlocks({ season: { logEffect } }: Plan, units: System): Block[] {
  if (!logEffect.ok) return [];
  const effect = logEffect.value;
  const print = printerFor(units);
  const shown = effectColumns.flatMap(([id, head]) => {
    const range = effect[id];
    return range ? [{ head, range }] : [];
  });
  return [
    table(
      [
        { head: 'What it changes', width: '*' },
        { head: 'By the plan alone', width: '*' },
        ...shown.map(({ head }) => ({ head, width: '*' as const })),
      ],
      effectLines(effect).map(({ name, kind, of }) => [
        name,
        print.quantity(of(effect.before), kind),
        ...shown.map(({ range }) => {
          const ends = { low: of(range.low), likely: of(range.likely), high: of(range.high) };
          const likely = print.quantity(ends.likely, kind);
          return ends.low === ends.high ? likely : `${likely} (${print.range(ends, kind)})`;
        }),
      ]),
    ),
  ];
}
