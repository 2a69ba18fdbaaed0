import { evaluate, type Plan } from '@kneewall/engine';
import type { Problem, Project, System } from '@kneewall/project';
import { exitCodes, Refused } from '../exit.ts';
import { readOptions } from '../options.ts';
import { planWithJobs, shortJobs } from '../planWithJobs.ts';
import { planLines } from '../print/plan.ts';
import { problemLines } from '../print/problems.ts';
import { painter } from '../print/text.ts';
import { readProject } from '../projectFile.ts';
import { unitsOf } from '../units.ts';

/** `kneewall check FILE`: evaluates, runs short jobs unless told otherwise, and tells what stands against each hold point. */
export async function check(args: readonly string[]): Promise<number> {
  const { values, positionals } = readOptions(
    args,
    {
      json: { type: 'boolean', default: false },
      quick: { type: 'boolean', default: false },
      long: { type: 'boolean', default: false },
      all: { type: 'boolean', default: false },
      units: { type: 'string' },
    },
    1,
  );
  const [file = ''] = positionals;
  if (values.quick && values.long) throw new Refused('Either --quick or --long, not both.');
  const { project, problems } = await readProject(file);
  const units = unitsOf(values.units, project);
  const plan = values.quick
    ? evaluate(project, {}, { units }).plan
    : await planWithJobs(project, file, units, shortJobs(values.long === true));
  if (values.json) process.stdout.write(`${JSON.stringify({ schema: 1, ...plan })}\n`);
  else tell(project, plan, problems, units, values.all);
  return exitOf(plan);
}

function tell(project: Project, plan: Plan, problems: readonly Problem[], units: System, all: boolean): void {
  const paint = painter(process.stdout.isTTY === true && process.env.NO_COLOR === undefined);
  const lines = planLines(project, plan, units, paint, all);
  const odd = problems.length > 0 ? ['', paint('Worth a second look', 'bold'), ...problemLines(problems)] : [];
  process.stdout.write(`${[...lines, ...odd].join('\n')}\n`);
}

function exitOf(plan: Plan): number {
  if (plan.findings.some((f) => f.because === 'fault')) return exitCodes.fault;
  return plan.findings.some((f) => f.status === 'fails') ? exitCodes.fails : exitCodes.nothingFails;
}
