import type { MaterialLine } from '../../../plan/lines.ts';
import { sizeWords } from '../joint/lines.ts';
import type { CutAnswers } from '../result.ts';
import type { BoughtCap } from './result.ts';

/** Caps and reducers that are cut, each with its sizes: for whoever would rather have them made. */
export const madeLines = ({ made, ducts }: Pick<CutAnswers, 'made' | 'ducts'>): MaterialLine[] => [
  ...made.flatMap((one): MaterialLine[] => {
    if (one.what === 'unknown') return [];
    const what =
      one.what === 'cap'
        ? `${one.name}, sheet metal: ${sizeWords({ kind: 'round', diameter: one.diameter })}`
        : `${one.name}, sheet metal: ${sizeWords(one.start)} to ${sizeWords(one.end)}`;
    return [lineOf(one.id, what, one.section)];
  }),
  ...ducts.flatMap(({ id, name, width, height, caps }) =>
    (['start', 'end'] as const).flatMap((end) =>
      caps[end]
        ? [
            lineOf(
              `${id} cap ${end}`,
              `Cap of “${name}”, sheet metal: ${sizeWords({ kind: 'rectangle', width, height })}`,
              id,
            ),
          ]
        : [],
    ),
  ),
];

const lineOf = (id: string, what: string, section: string): MaterialLine => ({
  id: `materials/made:${id.replaceAll(' ', '-')}`,
  trade: 'materials',
  what: `${what}; made, or cut from the cut sheet`,
  kind: 'count',
  amount: 1,
  soldBy: 1,
  for: `routes.ducts.sections.${section}`,
});

/** Caps from the shop, alike where their sizes are. */
export const capLines = (caps: readonly BoughtCap[]): MaterialLine[] =>
  caps.map(({ section, name, size, count }) => {
    const end = 'diameter' in size ? ({ kind: 'round', ...size } as const) : ({ kind: 'rectangle', ...size } as const);
    const mm = (m: number) => Math.round(m * 1000);
    return {
      id: `materials/cap:${section}`,
      trade: 'materials',
      what: `End ${count > 1 ? 'caps' : 'cap'} for “${name}”`,
      kind: 'count',
      amount: count,
      soldBy: 1,
      for: `routes.ducts.sections.${section}`,
      like: {
        id: 'diameter' in size ? `cap-${mm(size.diameter)}` : `cap-${mm(size.width)}x${mm(size.height)}`,
        what: `End caps of metal, ${sizeWords(end)}`,
      },
    };
  });
