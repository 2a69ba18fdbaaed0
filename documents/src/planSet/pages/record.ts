import type { Finding, Plan } from '@kneewall/engine';
import { inOrder, type Project, printQuantity, type System } from '@kneewall/project';
import { type Block, body, bold, lead, list, page, part, small, table } from '../block.ts';
import type { SetInput } from '../setInput.ts';
import { signOf } from '../signs.ts';
import { takenBlocks } from './logTaught.ts';

/** What was read at each visit with the verdict of this plan, the photos, room for what was built otherwise, and to sign. */
export function recordPages({ plan, project, units }: SetInput): Block[] {
  return [
    page('Record of start and seasons'),
    lead(
      'A record, not a certificate: what was found, by whom, with what, and what the plan of this print makes of it. Later visits are added, nothing is overwritten.',
    ),
    ...visitBlocks(plan, project, units),
    ...logBlocks(plan, project),
    ...takenBlocks(plan, units),
    ...photoBlocks(project),
    table(
      [
        { head: 'Built otherwise than planned: what, where', width: '*' },
        { head: 'Why, agreed with whom', width: '*' },
      ],
      Array.from({ length: 5 }, () => ['\n\n', '']),
      { title: 'Deviations', layout: 'boxed' },
    ),
    table(
      [
        { head: 'Name, licence', width: '*' },
        { head: 'Did or read what', width: '*' },
        { head: 'Day and signature', width: '*' },
      ],
      Array.from({ length: 4 }, () => ['\n\n', '', '']),
      { title: 'Signed', layout: 'boxed' },
    ),
  ];
}

function visitBlocks(plan: Plan, project: Project, units: System): Block[] {
  const visits = inOrder(project.visits ?? {});
  if (visits.length === 0) return [body('No visit is entered yet: write it by hand on the sheets for the readings.')];
  const of = (id: string): Finding[] => foundOf(plan, id).filter((f) => !f.id.includes('/since-first'));
  return visits.flatMap(([id, visit]) => [
    part([visit.name ?? id, ...(visit.day === undefined ? [] : [visit.day])].join(', ')),
    small(stateWords(visit, units)),
    foundTable(of(id)),
  ]);
}

const foundOf = (plan: Plan, subject: string): Finding[] =>
  plan.findings.filter((f) => f.trade === 'commissioning' && f.subject === subject);

const foundTable = (findings: readonly Finding[]): Block =>
  table(
    [
      { head: 'Stands', width: 62 },
      { head: 'What was found', width: '*' },
      { head: 'What it asks for', width: 170 },
    ],
    findings.map((f) => [bold(signOf(f.status)), f.what, f.mend]),
  );

/** What each log says, from when something changed among it. */
const logBlocks = (plan: Plan, project: Project): Block[] =>
  inOrder(project.logs ?? {}).flatMap(([id, log]) => [
    part(`By the log “${log.name ?? id}”`),
    foundTable(foundOf(plan, `log-${id}`)),
  ]);

type VisitEntry = NonNullable<Project['visits']>[string];

/** The state as it was entered; what was not read is not there. */
function stateWords(visit: VisitEntry, units: System): string {
  const warm = (words: string, entry: VisitEntry['outdoor']): string[] => {
    const { value } = entry ?? {};
    return typeof value === 'number' ? [`${words} ${printQuantity(value, 'temperature', units)}`] : [];
  };
  return [
    ...(visit.mode === undefined ? [] : [visit.mode]),
    ...(visit.speed === undefined ? [] : [`speed: ${visit.speed}`]),
    ...warm('outdoors', visit.outdoor),
    ...warm('return air', visit.returnAir),
    ...warm('supply air', visit.supplyAir),
    ...(visit.filter === undefined ? [] : [`filter: ${visit.filter}`]),
    ...(visit.who === undefined ? [] : [`read by ${visit.who}`]),
    ...(visit.note === undefined ? [] : [visit.note]),
  ].join('; ');
}

function photoBlocks(project: Project): Block[] {
  const photos = inOrder(project.photos ?? {});
  if (photos.length === 0) return [];
  const words = photos.map(([id, p]) =>
    [p.caption ?? id, p.shows, p.day, p.blob?.slice(0, 8)].filter((w) => w !== undefined).join(', '),
  );
  return [part('Photos, by their first eight letters'), list(words)];
}
