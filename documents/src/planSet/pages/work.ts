import { type Finding, type HoldPoint, holdPointTitle, holdPointWords, type Task } from '@kneewall/engine';
import { printQuantity, type System } from '@kneewall/project';
import { formatRange } from '@kneewall/project/quantity';
import { placeWords } from '../../calendar/workWords.ts';
import { type Block, body, bold, boxed, lead, page, part, small } from '../block.ts';
import type { SetInput } from '../setInput.ts';

/** What to do, by hold point: a card for each task with what can hurt first, with what, how long, where to stop, and when it is done. */
export function workPages({ plan, units }: SetInput): Block[] {
  return [
    page('What to do'),
    lead('Work may be left only at a safe stop. Times are for two handy people.'),
    ...(plan.tasks.length === 0 ? [body('No task follows from the plan yet.')] : []),
    ...holdPointWords.flatMap((point) => tasksOf(point, plan.tasks, plan.findings, units)),
  ];
}

function tasksOf(point: HoldPoint, tasks: readonly Task[], findings: readonly Finding[], units: System): Block[] {
  const here = tasks.filter((t) => t.holdPoint === point);
  if (here.length === 0) return [];
  const against = findings.filter((f) => f.holdPoint === point && f.status !== 'ok').length;
  const head = [
    part(`${holdPointTitle[point].title}: ${holdPointTitle[point].until}`),
    ...(against === 0 ? [] : [body(bold(`${against} checks do not hold yet for this step: settle them first.`))]),
  ];
  const [first, ...others] = here.map((task) => card(task, units));
  // The step's title is never left alone at the foot of a page.
  return [...(first ? [{ stack: [...head, first], unbreakable: true }] : head), ...others];
}

function card(task: Task, units: System): Block {
  const { what, duration, people, place = 'attic', tools = [], cautions, safeStops, doneWhen = [], cures } = task;
  return boxed([
    ...(cautions.length === 0 ? [] : [{ text: cautions.join(' '), style: 'caution' as const }]),
    { text: ['☐  ', bold(what)], style: 'body' },
    small(
      `${formatRange(duration, 'time', units)}, ${printQuantity(people, 'count', units)} ${people === 1 ? 'person' : 'people'}, ${placeWords[place]}.`,
    ),
    ...said('With what', tools),
    ...said('Stop only at', safeStops),
    ...said('Done when', doneWhen),
    ...(cures === undefined
      ? []
      : [small(`Then leave it alone for ${printQuantity(cures, 'time', units)}, or what its maker says.`)]),
  ]);
}

const said = (title: string, points: readonly string[]): Block[] =>
  points.length === 0 ? [] : [small([bold(`${title}: `), `${points.join('; ')}.`])];
