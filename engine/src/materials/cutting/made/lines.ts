import type { MaterialLine } from '../../../plan/lines.ts';
import { sizeWords } from '../joint/lines.ts';
import type { CutAnswers } from '../result.ts';

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
