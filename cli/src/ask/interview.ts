import {
  applyEdit,
  bunchesFor,
  emptyProject,
  type FieldMeta,
  fieldOf,
  type Project,
  type Question,
  type Range,
  type System,
  valueAt,
} from '@kneewall/project';
import { formatRange, printQuantity } from '@kneewall/project/quantity';
import { wrap } from '../print/text.ts';
import { optionsOf, readAnswer } from './readAnswer.ts';

/** How far the questions have come. Pure: a line in, the next state and what to say out. */
export type Interview = {
  readonly project: Project;
  readonly units: System;
  /** The number of the question that is open; past the last one it is over. */
  readonly at: number;
  /** Edits made so far, which is their running number. */
  readonly edits: number;
  /** What the last line may have meant, to be chosen by number. */
  readonly readings: readonly string[];
};

export const startInterview = (units: System): Interview => ({
  project: units === 'si' ? { ...emptyProject, site: { units } } : emptyProject,
  units,
  at: 0,
  edits: 0,
  readings: [],
});

type Open = { readonly question: Question; readonly heading: readonly string[]; readonly of: number };

/** The question that is open, with its bunch's heading where it is the first of it; none when all are answered. */
function openQuestion({ project, at }: Interview): Open | undefined {
  const all = bunchesFor(project).flatMap((bunch) =>
    bunch.questions.map((question, i) => ({
      question,
      heading: i === 0 ? ['', bunch.title, ...wrap(bunch.why, 78, '  ', '  ')] : [],
    })),
  );
  const open = all[at];
  return open && { ...open, of: all.length };
}

export const isOver = (interview: Interview): boolean => openQuestion(interview) === undefined;

/** The open question as it stands on the terminal, in 80 columns. */
export function questionLines(interview: Interview): string[] {
  const open = openQuestion(interview);
  if (!open) return [];
  const { meta } = fieldOf(open.question);
  const standing = valueAt(interview.project, open.question.path.split('.'));
  const examples = open.question.examples ? [`For example: ${open.question.examples.join(', ')}`] : [];
  const options = meta.node === 'quantity' ? [] : optionsOf(meta).map(([, words], i) => `${i + 1}  ${words}`);
  const empty =
    standing === undefined ? emptyWords(meta, interview.units) : 'Answered already. Empty keeps it, ? forgets it.';
  return [
    ...open.heading,
    '',
    ...wrap(`${interview.at + 1}/${open.of}  ${meta.label}`, 78),
    ...[...(meta.help ? [meta.help] : []), ...options, ...examples, empty].flatMap((t) => wrap(t, 78, '    ', '    ')),
  ];
}

function emptyWords(meta: FieldMeta, units: System): string {
  const fallback = meta.default;
  if (fallback === undefined) return 'Empty or ?: don’t know.';
  const said =
    typeof fallback === 'number'
      ? printQuantity(fallback, meta.kind ?? 'number', units)
      : typeof fallback === 'object'
        ? formatRange(fallback as Range, meta.kind ?? 'number', units)
        : (optionsOf(meta).find(([stored]) => stored === fallback)?.[1] ?? String(fallback));
  return `Empty or ?: don’t know; ${said} is assumed.`;
}

/** Takes one line. What is not understood, or cannot be by definition, is said and asked again. */
export function takeLine(interview: Interview, line: string): { next: Interview; say: readonly string[] } {
  const open = openQuestion(interview);
  if (!open) return { next: interview, say: [] };
  const go = (at: number, project = interview.project): Interview => ({ ...interview, project, at, readings: [] });
  if (line.trim().toLowerCase() === 'back')
    return interview.at === 0
      ? { next: go(0), say: ['    This is the first question.'] }
      : { next: go(interview.at - 1), say: [] };
  const path = open.question.path.split('.');
  const before = valueAt(interview.project, path);
  if (line.trim() === '' && before !== undefined) return { next: go(interview.at + 1), say: [] };
  const answer = readAnswer(line, fieldOf(open.question).meta, interview.units, interview.readings);
  const indented = (lines: readonly string[]) => lines.flatMap((l) => wrap(l, 78, '    ', '    '));
  if (answer.kind === 'again')
    return { next: { ...interview, readings: answer.readings ?? [] }, say: indented(answer.say) };
  const after = answer.kind === 'value' ? answer.value : undefined;
  if (after === undefined && before === undefined) return { next: go(interview.at + 1), say: [] };
  const edit = { device: 'terminal', seq: interview.edits + 1, path, before, after };
  const { value, problems } = applyEdit(interview.project, edit);
  if (problems.length > 0) return { next: go(interview.at), say: indented(problems.map((p) => p.mend)) };
  const say = answer.kind === 'value' ? indented([`= ${answer.echo}`]) : [];
  return { next: { ...go(interview.at + 1, value), edits: interview.edits + 1 }, say };
}
