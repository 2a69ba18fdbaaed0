import type { Printer } from '../../plan/printer.ts';
import type { SectionSizing } from './setUp.ts';
import type { DuctSizing } from './sizeDucts.ts';
import type { BrokenLimit, NextSize, Relaxation, SizingGoal, SizingProof, SizingTotals } from './spec.ts';
import { sizeWords, spaceWords, takeOne, wayOutWords } from './wayOutWords.ts';
import { wayOut } from './waysOut.ts';

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
  return `${first} The stocked choice that takes ${goalWords[sizing.goal]} uses ${uses}. What is still to be bought takes ${totalWords(d, totals, print)}. ${proofWords(sizing.proof, sizing.goal, print)}`;
}

/** The cost of the choice, with its range where prices or hours were entered as ranges. */
function totalWords({ sizing, ranges }: DuctSizing, totals: SizingTotals, print: Printer): string {
  const range = sizing.goal === 'labour' ? ranges?.labour : ranges?.money;
  const kind = sizing.goal === 'labour' ? 'time' : 'money';
  const from = range && range.low < range.high ? ` (${print.range(range, kind)})` : '';
  return `${costOf(sizing.goal, totals, print)}${from}`;
}

/** Whose prices or hours steer the choice: those entered, or stand-ins. */
export function pricesWords(d: DuctSizing): string {
  if (d.sizing.status !== 'fits') return '';
  if (d.sizing.goal === 'labour') return d.hoursEntered ? '' : hoursStandIn;
  if (!d.pricesEntered) return standIn;
  if (d.standIns.length === 0)
    return 'Every duct of it has a price that you entered, each bought a tenth longer than it runs.';
  const names = d.standIns.map((id) => `“${d.sections[id]?.name ?? id}”`).join(', ');
  return `No price is entered for the size of ${names}: a stand-in is used, in proportion to those entered of its kind where there are any. Enter it before you order.`;
}

/** What a section has to pass, and what that leaves of the sizes to be had. */
export function passesWords({ name, space }: SectionSizing, print: Printer): string {
  if (!space) return '';
  const { goIn, of, largest } = space;
  const most = largest ? `, the largest ${sizeWords({ shape: largest, runs: 1 }, print)}` : '';
  const through = spaceWords(name, space, print);
  if (of === 0) return `Through ${through}: no kind of duct is allowed.`;
  return `Through ${through}: ${goIn === 0 ? 'none' : goIn === of ? 'all' : goIn} of ${of} sizes ${goIn === 1 ? 'goes' : 'go'} in, insulation counted${most}.`;
}

/** What it costs that ducts have to pass spaces. */
export function spaceTakesWords({ sizing, spaceTakes }: DuctSizing, print: Printer): string {
  if (spaceTakes === undefined) return '';
  const cost = costOf(sizing.goal, { money: spaceTakes, labour: spaceTakes }, print);
  const nothing = sizing.goal === 'labour' ? spaceTakes < 30 : spaceTakes < 0.5;
  return nothing ? 'Passing these spaces costs nothing more.' : `Running free they would take ${cost} less.`;
}

/** One duct that should be another size: “Return from the hall”: 14 in flexible instead of 9 in flexible. */
export function changeWords({ sizing, sections }: DuctSizing, section: string, print: Printer): string {
  const drawn = sections[section]?.drawn;
  if (sizing.status !== 'fits' || !drawn) return '';
  const size = sizeOf(sections, section, sizing.best.choice[section], print);
  const old = sections[section]?.there ? ' The old duct comes out: a task of its own.' : '';
  return `“${sections[section]?.name ?? section}”: ${size} instead of ${sizeWords(drawn, print)}.${old}`;
}

function proofWords(proof: SizingProof, goal: SizingGoal, print: Printer): string {
  if (proof.kind === 'proved') return 'Proved: no other choice is better.';
  const bound = costOf(goal, { money: proof.bound, labour: proof.bound }, print);
  return `Not proved best: no choice can take less than ${bound}, so at most ${print.quantity(proof.gap, 'fraction')} could be saved.`;
}

const hoursStandIn =
  'The hours are rules of thumb without a source. Enter what a joint takes you under “What ducts may be made of”.';
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
  const turn = couldTurn({ sizing, sections }) ? ' Within the ranges entered it could be the better one.' : '';
  return `Next best, ${price}: ${changes.join(', ')}; ${print.quantity(runnerUp.totals.pressure, 'pressure')}.${turn}`;
}

/** Whether the ranges of what was entered alone could put the runner-up before the best. */
function couldTurn({ sizing, sections }: Pick<DuctSizing, 'sizing' | 'sections'>): boolean {
  if (sizing.status !== 'fits' || !sizing.runnerUp || sizing.goal === 'static') return false;
  const { best, runnerUp, goal } = sizing;
  const end = (id: string, option: string | undefined, at: 'low' | 'high'): number => {
    const o = optionOf(sections, id, option);
    return o ? (o.ranges?.[goal][at] ?? o[goal]) : 0;
  };
  const most = runnerUp.differs.reduce(
    (a, id) => a + end(id, best.choice[id], 'high') - end(id, runnerUp.choice[id], 'low'),
    0,
  );
  const wide = runnerUp.differs.some(
    (id) =>
      end(id, best.choice[id], 'low') < end(id, best.choice[id], 'high') ||
      end(id, runnerUp.choice[id], 'low') < end(id, runnerUp.choice[id], 'high'),
  );
  return wide && most > 0;
}

const costSame = (a: SizingTotals, b: SizingTotals, goal: SizingGoal): boolean =>
  goal === 'labour' ? Math.abs(a.labour - b.labour) < 30 : Math.abs(a.money - b.money) < 0.5;

const optionOf = (sections: DuctSizing['sections'], id: string, option: string | undefined) =>
  sections[id]?.options.find((o) => o.id === option);

function sizeOf(sections: DuctSizing['sections'], id: string, option: string | undefined, print: Printer): string {
  const found = optionOf(sections, id, option);
  return found ? sizeWords(found, print) : (option ?? '');
}

/** What a section's next size would buy. */
export function nextSizeWords(d: DuctSizing, next: NextSize, print: Printer): string {
  const name = d.sections[next.section]?.name ?? next.section;
  const size = sizeOf(d.sections, next.section, next.option, print);
  const gain =
    next.gainSystem > 0
      ? `${print.quantity(next.gainSystem, 'pressure')} less for the whole`
      : `${print.quantity(next.gainOwn, 'pressure')} less in it, but another way stays the hardest`;
  const standsIn = d.pricesEntered && optionOf(d.sections, next.section, next.option)?.standIn;
  const cost = `${costOf(d.sizing.goal, next, print)} more${standsIn ? ', at a stand-in price' : ''}`;
  return `“${name}” as ${size}: ${gain}, ${cost}.`;
}

function nothingWords(d: DuctSizing, print: Printer): string {
  const { sizing, sections } = d;
  if (sizing.status === 'fits') return '';
  const [closed] = sizing.closed;
  const section = closed === undefined ? undefined : sections[closed];
  if (section?.options.length === 0)
    return `Every kind of duct is ruled out for “${section.name}”, or none of its sizes is listed. Say what it may be made of, or list the sizes with stock or prices.`;
  if (section) {
    const { space } = section;
    const through = space?.passes ? spaceWords(section.name, space, print) : `“${section.name}”`;
    const barred = section.options.flatMap((o) => o.breaks ?? []);
    const limits = limitsWords(space?.passes ? barred.filter((b) => b.limit === 'velocity') : barred, print);
    return `No choice of stocked sizes takes ${print.quantity(section.flow, 'flow')} through ${through}${limits}. ${takeOne(sizing.relaxations.length)}`;
  }
  if (sizing.budget <= 0)
    return `The filter and what is added take all that the blower gives at ${print.quantity(d.flow, 'flow')}: nothing is left for ducts. ${takeOne(sizing.relaxations.length)}`;
  const way = sizing.ways.flatMap((w) => w.sections).map((id) => `“${sections[id]?.name ?? id}”`);
  return `No choice of stocked sizes meets the pressure: the most generous ones allowed still take ${print.quantity(sizing.leastPressure ?? 0, 'pressure')}, and there is ${print.quantity(sizing.budget, 'pressure')}. The hardest way is ${way.join(', ')}. ${takeOne(sizing.relaxations.length)}`;
}

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
export const relaxationWords = (d: DuctSizing, r: Relaxation, print: Printer): string =>
  wayOutWords(wayOut(d, r), print);
