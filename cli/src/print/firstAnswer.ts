import {
  answerSentence,
  answerTitles,
  basisWords,
  type Finding,
  type FirstAnswer,
  firstAnswer,
  largestUnknown,
  measurementsFor,
  measurementWorth,
  nothingStops,
  type Plan,
  type Printer,
  printerFor,
  type Spread,
  sizesWords,
  unitStatus,
  unitWords,
  winterWords,
} from '@kneewall/engine';
import { type Project, pathLabel, type System } from '@kneewall/project';
import { type Paint, wrap } from './text.ts';

const width = 78;
const indent = (text: string): string[] => wrap(text, width, '  ', '  ');

/** The first answer as the app's first screen has it, for a terminal: the sentence, the lines, what to do next. */
export function firstAnswerLines(project: Project, plan: Plan, units: System, paint: Paint): string[] {
  const print = printerFor(units);
  const answer = firstAnswer(plan);
  const label = (path: string): string => pathLabel(path, project);
  const part = (title: string, lines: readonly string[]): string[] =>
    lines.length === 0 ? [] : ['', paint(title, 'bold'), ...lines];
  const spreadLines = (spread: Spread, ...said: string[]): string[] => [
    ...tapeLines(spread, print),
    ...[...said, ...[largestUnknown(spread, 'power', label, print) ?? []].flat()].flatMap(indent),
  ];
  const { heating, winter, cooling } = answer;
  const basis = basisWords(answer, print);
  const contradicted = winter?.verdict === 'contradicts';
  const measurements = measurementsFor(heating?.drivers ?? []);
  return [
    paint(answerTitles.whole, 'bold'),
    ...wrap(answerSentence(answer, print), width),
    ...(basis ? wrap(basis, width) : []),
    ...(answer.missing.length > 0 ? wrap(`Next, tell: ${answer.missing.map(label).join(', ')}.`, width) : []),
    ...part(
      answerTitles.heating,
      heating ? spreadLines(heating, ...(winter && !contradicted ? [winterWords(winter, print)] : [])) : [],
    ),
    ...part(answerTitles.contradiction, contradicted ? spreadLines(winter.fuel, winterWords(winter, print)) : []),
    ...unitParts(answer, print, part),
    ...part(answerTitles.cooling, cooling ? spreadLines(cooling) : []),
    ...part(answerTitles.change, answer.change ? findingLines(answer.change) : []),
    ...part(
      answerTitles.next,
      measurements.flatMap((m, i) =>
        wrap(`${m.how}${measurementWorth(m, label, print)}`, width, `  ${i + 1}  `, '     '),
      ),
    ),
  ];
}

type Part = (title: string, lines: readonly string[]) => string[];

function unitParts(answer: FirstAnswer, print: Printer, part: Part): string[] {
  const { units, heating, stops, gatesChecked, partly } = answer;
  const known = units.map((unit) => `${unitStatus(unit)}: ${unitWords(unit, print)}`);
  return [
    ...part(answerTitles.units, known.flatMap(indent)),
    ...part(answerTitles.sizes, units.length === 0 && heating && !partly ? indent(sizesWords(heating, print)) : []),
    ...part(
      answerTitles.stops,
      stops.length > 0 ? stops.flatMap(findingLines) : gatesChecked ? indent(nothingStops) : [],
    ),
  ];
}

const tapeLines = (range: Spread, print: Printer): string[] =>
  (['low', 'likely', 'high'] as const).map((end) => `  ${end.padEnd(7)}${print.quantity(range[end], 'power')}`);

const findingLines = (f: Finding): string[] => [
  ...indent(`${f.status}: ${f.what}`),
  ...(f.status === 'ok' ? [] : indent(`Mend: ${f.mend}`)),
  ...(f.caution !== undefined && f.status !== 'ok' ? indent(`Caution: ${f.caution}`) : []),
];
