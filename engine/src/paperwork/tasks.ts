import type { Task } from '../plan/lines.ts';
import { minutes } from '../plan/minutes.ts';
import { tool } from '../plan/tools.ts';
import type { Paper, PaperworkResult } from './result.ts';

/** What has a place in the plan of work: inspections before the first power, the form of a warranty after the first start. */
export const tasks = ({ papers, registers }: PaperworkResult): readonly Task[] => [
  ...papers.flatMap((p) => (p.kind === 'inspection' && p.status !== 'granted' ? [inspection(p)] : [])),
  ...papers.flatMap((p) => (registers[p.id] === undefined ? [] : [register(p, registers[p.id] ?? 0)])),
];

const asker = ({ asker }: Paper): string => (asker === undefined ? '' : ` (${asker})`);

const inspection = (p: Paper): Task => ({
  id: `paperwork/inspect-${p.id}`,
  trade: 'paperwork',
  what: `Be there for the inspection: ${p.name}${asker(p)}; show what was asked to be left open, write down what they say`,
  holdPoint: 'close',
  // Common practice, no source.
  duration: minutes(20, 45, 90),
  people: 1,
  place: 'inside',
  after: [],
  gates: 'start',
  safeStops: ['When they have left: what they want changed is written down'],
  cautions: [
    'Cover nothing and put no power on before it is passed.',
    'They come in their own hours: agree on the day first, and enter it as a window if it is none of yours.',
  ],
  tools: [tool.phone, tool.lamp],
  doneWhen: ['Passed, with a name, a number and a day under Paperwork'],
});

const register = (p: Paper, days: number): Task => ({
  id: `paperwork/register-${p.id}`,
  trade: 'paperwork',
  what: `Register “${p.name}”${asker(p)} within ${Math.floor(days)} days of the first start`,
  holdPoint: 'start',
  duration: minutes(10, 20, 45),
  people: 1,
  place: 'inside',
  parts: 'any',
  after: ['commissioning/first-hour'],
  within: Math.floor(days),
  safeStops: ['Any time'],
  cautions: ['Read which day its terms count from: where that is the purchase, there are fewer days than named here.'],
  tools: [tool.phone],
  doneWhen: ['Its confirmation is kept, with number and day', 'The report of the first start is kept with it'],
});
