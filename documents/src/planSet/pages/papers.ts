import {
  inHundreds,
  ownJob,
  type Plan,
  paperStatusTitle,
  paperTitle,
  questionWords,
  quoteScopeTitle,
  workTitle,
} from '@kneewall/engine';
import { resolveProject } from '@kneewall/project';
import { formatRange } from '@kneewall/project/quantity';
import { licenceWords } from '../../lists/paperLists.ts';
import { type Block, body, checklist, lead, page, small, table } from '../block.ts';
import { orUnknown } from '../orUnknown.ts';
import type { SetInput } from '../setInput.ts';

type Papers = NonNullable<Plan['trades']['paperwork']>;

/** Papers by the day they are due, who may do what, what to ask, quotes at one scope, and what each unit costs over its life. */
export function papersPage(input: SetInput): Block[] {
  const { plan, units } = input;
  const { paperwork } = plan.trades;
  if (!paperwork) return [];
  const open = paperwork.questions.filter((q) => q.open).map((q) => questionWords[q.id]);
  return [
    page('Papers and licensed work'),
    lead('The local authority decides what is needed and who may do it. What it says stands above this plan.'),
    ...paperTable(paperwork),
    workTable(paperwork),
    ...(open.length === 0
      ? []
      : [body('Ask before you decide:'), checklist(open.map(({ who, ask }) => `${who}: ${ask}`))]),
    ...quoteTable(paperwork, input),
    ...lifeTable(plan, units),
  ];
}

function paperTable({ papers, registers }: Papers): Block[] {
  if (papers.length === 0) return [body('No paper is entered yet: permits, terms, insurance.')];
  const note = (id: string): string =>
    registers[id] === undefined ? '' : `; register within ${Math.round(registers[id])} days`;
  return [
    table(
      [
        { head: '', width: 10 },
        { head: 'Paper', width: '*' },
        { head: 'Who asks', width: 110 },
        { head: 'By', width: 62 },
        { head: 'Stands', width: 60 },
        { head: 'Licensed installer', width: 95 },
      ],
      papers.map((p) => [
        p.status === 'granted' ? '☑' : '☐',
        `${paperTitle(p)}${note(p.id)}`,
        p.asker ?? '',
        p.due ?? (p.dueWrong ? 'no such day' : ''),
        paperStatusTitle[p.status],
        licenceWords(p),
      ]),
      { title: 'Papers by the day they are due' },
    ),
  ];
}

const workTable = ({ works, papers }: Papers): Block =>
  table(
    [
      { head: 'Work', width: 150 },
      { head: 'Who does it', width: 100 },
      { head: 'A licensed person is asked for by', width: '*' },
    ],
    works.map((w) => [
      workTitle[w.work],
      w.hands === undefined ? 'not settled' : w.hands === 'us' ? 'you' : 'a licensed person',
      w.wanted.length > 0
        ? papers
            .filter((p) => w.wanted.includes(p.id))
            .map((p) => p.asker ?? p.name)
            .join(', ')
        : w.silent.length > 0 || w.free.length === 0
          ? 'not known: ask'
          : 'nobody, by what was entered',
    ]),
    { title: 'Work that is usually kept for licensed people' },
  );

const quoteTable = ({ quotes }: Papers, { plan, project, units }: SetInput): Block[] =>
  quotes.length === 0
    ? []
    : [
        table(
          [
            { head: 'Quote', width: '*' },
            { head: 'Leaves out', width: 160 },
            { head: 'Asks', width: 70, right: true },
            { head: 'With all that', width: 110, right: true },
          ],
          [
            ...quotes.map((q) => [
              q.name,
              q.missing.map((m) => quoteScopeTitle[m.scope]).join(', ') || 'nothing',
              q.amount ? formatRange(q.amount, 'money', units) : 'not entered',
              orUnknown(q.total, (t) => formatRange(t, 'money', units)),
            ]),
            ...ownRow(plan, project, units),
          ],
          { title: 'Quotes, brought to the whole job' },
        ),
      ];

/** By one's own hands, once the list has its prices; hours are not counted. */
function ownRow(plan: Plan, project: SetInput['project'], units: SetInput['units']): string[][] {
  const list = plan.trades.materials?.list;
  if (!list?.ok) return [];
  const { bought, unpriced, hired, total } = ownJob(list.value.cost, resolveProject(project).work);
  const more = unpriced > 0 ? `more than ` : '';
  return [
    [
      'By your own hands, hours not counted',
      `paid to others: ${hired.map((s) => quoteScopeTitle[s]).join(', ')}${unpriced > 0 ? `; ${unpriced} things without a price` : ''}`,
      `${more}${formatRange(bought, 'money', units)}`,
      orUnknown(total, (t) => `${more}${formatRange(t, 'money', units)}`),
    ],
  ];
}

function lifeTable({ season }: Plan, units: SetInput['units']): Block[] {
  if (!season.lifeCost.ok) return [];
  const { units: all, years, interest } = season.lifeCost.value;
  const told = ({ low, likely, high }: { low: number; likely: number; high: number }): string =>
    formatRange({ low: inHundreds(low), likely: inHundreds(likely), high: inHundreds(high) }, 'money', units);
  return [
    table(
      [
        { head: 'Unit', width: '*' },
        { head: 'To buy', width: 60, right: true },
        { head: 'Over its life', width: 110, right: true },
        { head: 'Beside the cheapest', width: 150 },
      ],
      all.map((u, i) => [
        `${u.name}${u.chosen ? ' (chosen)' : ''}${u.unfit ? ` (${u.unfit === 'cold' ? 'does not hold the house alone' : 'the inverter may not start it'})` : ''}`,
        formatRange({ low: u.parts.purchase, likely: u.parts.purchase, high: u.parts.purchase }, 'money', units),
        told(u.total),
        i === 0 && !u.apart ? 'looks cheapest' : u.apart ? `dearer by ${told(u.beyond)}` : 'cannot be told apart',
      ]),
      { title: 'What each unit costs over its life' },
    ),
    small(
      `From low to high, over ${formatRange(years, 'count', units)} years, with ${formatRange(interest, 'fraction', units)} interest above inflation, in today’s money of your own.`,
    ),
  ];
}
