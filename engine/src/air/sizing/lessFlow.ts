import { compileSizing } from './compile.ts';
import { leastOf } from './least.ts';
import { type DuctSizingInput, type SectionSizing, type SetUp, setUp } from './setUp.ts';
import type { Relaxation, Sizing, SizingSpec } from './spec.ts';

/** Percent of the wanted flow below which less flow is no advice. */
const leastPercent = 30;

/**
 * How much less air would have to flow: through each section without a size, the most that one of its sizes carries
 * quietly; else through the whole system, in whole percents, so much that something fits.
 */
export function lessFlow(
  solved: Extract<Sizing, { status: 'nothing-fits' }>,
  input: DuctSizingInput,
  task: SetUp,
): Relaxation[] {
  if (solved.closed.length > 0)
    return task.sections.flatMap((s) => (solved.closed.includes(s.id) ? throughOne(s, task) : []));
  const percent = mostPercent(input);
  return percent === undefined
    ? []
    : [{ limit: 'flow', from: input.flow, to: (input.flow * percent) / 100, enough: true }];
}

/** The option that carries most within its speed. It is enough if its loss at the full flow fits: with less it loses less. */
function throughOne(s: SectionSizing, { spec }: SetUp): Relaxation[] {
  const carried = s.options.flatMap((option) => {
    const [only, ...more] = option.breaks ?? [];
    return only?.limit === 'velocity' && more.length === 0 ? [{ option, share: only.most / only.value }] : [];
  });
  const [best] = carried.sort((a, b) => b.share - a.share || (a.option.id < b.option.id ? -1 : 1));
  if (!best || 100 * best.share < leastPercent) return [];
  const { breaks: _lifted, ...open } = best.option;
  const sections = spec.sections.map((x) => (x.id === s.id ? { ...x, options: [open] } : x));
  return [
    {
      limit: 'flow',
      section: s.id,
      option: best.option.id,
      from: s.flow,
      to: s.flow * best.share,
      enough: fits({ ...spec, sections }),
    },
  ];
}

/** Less flow loses less and the blower gives more, so halving finds the most that fits; undefined where none does. */
function mostPercent(input: DuctSizingInput): number | undefined {
  const first = input.model.blower.points[0]?.flow ?? 0;
  const fitsAt = (percent: number) => fits(setUp(input, (input.flow * percent) / 100).spec);
  let low = Math.max(leastPercent, Math.ceil((100 * first) / input.flow));
  let high = 100;
  if (low >= high || !fitsAt(low)) return undefined;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (fitsAt(middle)) low = middle;
    else high = middle;
  }
  return low;
}

function fits(spec: SizingSpec): boolean {
  const c = compileSizing(spec);
  const least = leastOf(c);
  return least.supply + least.return <= c.budget;
}
