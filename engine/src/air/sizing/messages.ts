import type { Printer } from '../../plan/printer.ts';
import type { DuctSizing } from './sizeDucts.ts';
import type { BrokenLimit, NextSize, Relaxation, SizingGoal, SizingProof, SizingTotals } from './spec.ts';
import type { DuctKind, DuctShape } from './stock.ts';

const kindWords: Readonly<Record<DuctKind, string>> = {
  flexible: 'flexible',
  round: 'round metal',
  rectangular: 'rectangular metal',
  board: 'duct board',
};

/** “8 in flexible”, “14 in × 8 in rectangular metal”. */
function shapeWords(shape: DuctShape, print: Printer): string {
  const length = (m: number) => print.quantity(m, 'length');
  const size = 'diameter' in shape ? length(shape.diameter) : `${length(shape.width)} × ${length(shape.height)}`;
  return `${size} ${kindWords[shape.kind]}`;
}

const goalWords: Readonly<Record<SizingGoal, string>> = {
  money: 'the least money',
  labour: 'the least work',
  static: 'the least pressure',
};

const costOf = (goal: SizingGoal, t: Pick<SizingTotals, 'money' | 'labour'>, print: Printer): string =>
  goal === 'labour' ? print.rounded(t.labour, 'time') : print.rounded(t.money, 'money');

/** The one sentence: what fits and costs least, or that nothing does. */
export function sizingSentence(d: DuctSizing, print: Printer): string {
  const { sizing } = d;
  if (sizing.status === 'nothing-fits') return nothingWords(d, print);
  const { totals } = sizing.best;
  const first =
    d.changed.length === 0
      ? 'Every duct is drawn in its best stocked size.'
      : `${d.changed.length === 1 ? 'One duct' : `${d.changed.length} ducts`} should be another size.`;
  const uses = `${print.quantity(totals.pressure, 'pressure')} of the ${print.quantity(sizing.budget, 'pressure')} there is for ducts and registers`;
  const prices = d.pricesEntered || sizing.goal === 'labour' ? '' : ` ${standIn}`;
  return `${first} The stocked choice that takes ${goalWords[sizing.goal]} uses ${uses}, and ${costOf(sizing.goal, totals, print)} for what is still to be bought. ${proofWords(sizing.proof, sizing.goal, print)}${prices}`;
}

/** One duct that should be another size: “Return from the hall”: 14 in flexible instead of 9 in flexible. */
export function changeWords({ sizing, sections }: DuctSizing, section: string, print: Printer): string {
  const drawn = sections[section]?.drawn;
  if (sizing.status !== 'fits' || !drawn) return '';
  const size = sizeOf(sections, section, sizing.best.choice[section], print);
  return `“${sections[section]?.name ?? section}”: ${size} instead of ${shapeWords(drawn.shape, print)}.`;
}

function proofWords(proof: SizingProof, goal: SizingGoal, print: Printer): string {
  if (proof.kind === 'proved') return 'Proved: no other choice is better.';
  const bound = costOf(goal, { money: proof.bound, labour: proof.bound }, print);
  return `Not proved best: no choice can take less than ${bound}, so at most ${print.quantity(proof.gap, 'fraction')} could be saved.`;
}

const standIn =
  'The prices are stand-ins without a source: only their differences between sizes steer the choice. Enter yours before you order.';

/** The runner-up, or that there is none. */
export function runnerUpWords({ sizing, sections }: DuctSizing, print: Printer): string {
  if (sizing.status !== 'fits') return '';
  const { runnerUp, best, goal } = sizing;
  if (!runnerUp) return sizing.proof.kind === 'proved' ? 'No other choice fits.' : '';
  const changes = runnerUp.differs.map(
    (id) => `“${sections[id]?.name ?? id}” ${sizeOf(sections, id, runnerUp.choice[id], print)}`,
  );
  const extra = costOf(
    goal,
    { money: runnerUp.totals.money - best.totals.money, labour: runnerUp.totals.labour - best.totals.labour },
    print,
  );
  const price = costSame(best.totals, runnerUp.totals, goal) ? 'at the same cost' : `for ${extra} more`;
  return `Next best, ${price}: ${changes.join(', ')}; ${print.quantity(runnerUp.totals.pressure, 'pressure')}.`;
}

const costSame = (a: SizingTotals, b: SizingTotals, goal: SizingGoal): boolean =>
  goal === 'labour' ? Math.abs(a.labour - b.labour) < 30 : Math.abs(a.money - b.money) < 0.5;

function sizeOf(sections: DuctSizing['sections'], id: string, option: string | undefined, print: Printer): string {
  const found = sections[id]?.options.find((o) => o.id === option);
  if (!found) return option ?? '';
  const one = shapeWords(found.shape, print);
  return found.runs > 1 ? `${found.runs} × ${one} side by side` : one;
}

/** What a section's next size would buy. */
export function nextSizeWords(d: DuctSizing, next: NextSize, print: Printer): string {
  const name = d.sections[next.section]?.name ?? next.section;
  const size = sizeOf(d.sections, next.section, next.option, print);
  const gain =
    next.gainSystem > 0
      ? `${print.quantity(next.gainSystem, 'pressure')} less for the whole`
      : `${print.quantity(next.gainOwn, 'pressure')} less in it, but another way stays the hardest`;
  return `“${name}” as ${size}: ${gain}, ${costOf(d.sizing.goal, next, print)} more.`;
}

function nothingWords(d: DuctSizing, print: Printer): string {
  const { sizing, sections } = d;
  if (sizing.status === 'fits') return '';
  const [closed] = sizing.closed;
  const section = closed === undefined ? undefined : sections[closed];
  if (section) {
    const limits = limitsWords(
      section.options.flatMap((o) => o.breaks ?? []),
      print,
    );
    return `No choice of stocked sizes takes ${print.quantity(section.flow, 'flow')} through “${section.name}”${limits}. ${takeOne(sizing.relaxations)}`;
  }
  if (sizing.budget <= 0)
    return `The filter and what is added take all that the blower gives at ${print.quantity(d.flow, 'flow')}: nothing is left for ducts. ${takeOne(sizing.relaxations)}`;
  const way = sizing.ways.flatMap((w) => w.sections).map((id) => `“${sections[id]?.name ?? id}”`);
  return `No choice of stocked sizes meets the pressure: the most generous ones allowed still take ${print.quantity(sizing.leastPressure ?? 0, 'pressure')}, and there is ${print.quantity(sizing.budget, 'pressure')}. The hardest way is ${way.join(', ')}. ${takeOne(sizing.relaxations)}`;
}

const takeOne = (list: readonly Relaxation[]): string =>
  list.length === 0
    ? 'No single limit is enough; more than one has to give.'
    : list.length === 1
      ? 'This would have to give:'
      : `Take one of these ${list.length === 2 ? 'two' : 'three'}:`;

/** “, in 300 mm of height and at 3.6 m/s”: each limit that bars a size, once. */
function limitsWords(breaks: readonly BrokenLimit[], print: Printer): string {
  const found = (limit: BrokenLimit['limit']) => breaks.find((b) => b.limit === limit)?.most;
  const [depth, width, velocity] = [found('depth'), found('width'), found('velocity')];
  const parts = [
    ...(depth === undefined ? [] : [`in ${print.quantity(depth, 'length')} of height`]),
    ...(width === undefined ? [] : [`in ${print.quantity(width, 'length')} of width`]),
    ...(velocity === undefined ? [] : [`at no more than ${print.quantity(velocity, 'velocity')}`]),
  ];
  return parts.length > 0 ? `, ${parts.join(' and ')}` : '';
}

/** One way out, as an instruction; it says if it is not enough alone. */
export function relaxationWords(d: DuctSizing, r: Relaxation, print: Printer): string {
  const name = r.section === undefined ? '' : (d.sections[r.section]?.name ?? r.section);
  const size = r.section === undefined ? '' : sizeOf(d.sections, r.section, r.option, print);
  const words: Readonly<Record<Relaxation['limit'], () => string>> = {
    budget: () =>
      `Free ${print.quantity(r.to - r.from, 'pressure')} for the ducts: a larger filter, a higher blower setting, or another unit.`,
    depth: () =>
      `Give “${name}” ${print.quantity(r.to, 'length')} of height instead of ${print.quantity(r.from, 'length')}: then ${size} goes in. Joists are cut only as the local code allows.`,
    width: () =>
      `Give “${name}” ${print.quantity(r.to, 'length')} of width instead of ${print.quantity(r.from, 'length')}: then ${size} goes in.`,
    velocity: () =>
      `Accept ${print.quantity(r.to, 'velocity')} in “${name}” with ${size}: louder than the usual ${print.quantity(r.from, 'velocity')}.`,
    runs: () => `Run ${size} for “${name}”.`,
    bought: () => `Exchange “${name}”, which is already bought, for ${size}.`,
    flow: () =>
      r.section === undefined
        ? `Move ${print.quantity(r.to, 'flow')} in all instead of ${print.quantity(r.from, 'flow')}: a lower blower setting or a smaller unit.`
        : `Send ${print.quantity(r.to, 'flow')} through “${name}” instead of ${print.quantity(r.from, 'flow')}, in ${size}; the rest another way.`,
  };
  return `${words[r.limit]()}${r.enough ? '' : ' Not enough alone.'}`;
}
