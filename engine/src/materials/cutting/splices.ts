import type { MaterialLine } from '../../plan/lines.ts';
import { sizeWords } from './joint/lines.ts';
import type { CutAnswers } from './result.ts';

/** Bands of a splice: round both inner cores on the sleeve, and round both jackets. Source: `materials.used-up` (common practice). */
const bandsEach = 4;

/** A sleeve for each splice of flexible duct, by its size, and the bands that hold core and jacket on it. */
export function spliceLines({ bags }: Pick<CutAnswers, 'bags'>): MaterialLine[] {
  const spliced = bags.flatMap(({ diameter, plan }) => {
    const count = plan.splices.reduce((a, x) => a + x.count, 0);
    return plan.problems.length === 0 && count > 0 ? [{ diameter, count }] : [];
  });
  const all = spliced.reduce((a, x) => a + x.count, 0);
  if (all === 0) return [];
  const base = { trade: 'materials', kind: 'count', soldBy: 1 } as const;
  return [
    ...spliced.map(({ diameter, count }): MaterialLine => {
      const mm = Math.round(diameter * 1000);
      const what = `Splice sleeves of metal for flexible duct, ${sizeWords({ kind: 'round', diameter })}`;
      // Without a blank before its size: a price without a size is for any.
      const like = { id: `splice-sleeve-${mm}`, what };
      return { ...base, id: `materials/splice-sleeve:${mm}`, what, amount: count, for: 'routes.ducts.sections', like };
    }),
    {
      ...base,
      id: 'materials/splice-bands',
      what: 'Clamp bands at splices: round both inner cores and both jackets',
      amount: bandsEach * all,
      like: { id: 'bands', what: 'Clamp bands for flexible duct, for its jackets and inner cores' },
    },
  ];
}
