import { logFitKind } from '@kneewall/engine';
import { exitCodes, Refused } from '../exit.ts';
import { readOptions } from '../options.ts';
import { planWithJobs } from '../planWithJobs.ts';
import { findingLines } from '../print/plan.ts';
import { painter } from '../print/text.ts';
import { readProject } from '../projectFile.ts';
import { unitsOf } from '../units.ts';

/** `kneewall log FILE`: what the project's logs say, without working out the rest of the plan. */
export async function log(args: readonly string[]): Promise<number> {
  const { values, positionals } = readOptions(
    args,
    { json: { type: 'boolean', default: false }, units: { type: 'string' } },
    1,
  );
  const [file = ''] = positionals;
  const { project } = await readProject(file);
  const logs = Object.keys(project.logs ?? {});
  if (logs.length === 0) throw new Refused(`${file} has no log. Take one in: kneewall import log FILE --into ${file}`);
  const plan = await planWithJobs(project, file, unitsOf(values.units, project), (job) => job.kind === logFitKind);
  const said = logs.map((id) => ({
    id,
    name: project.logs?.[id]?.name ?? id,
    findings: plan.findings.filter((f) => f.trade === 'commissioning' && f.subject === `log-${id}`),
  }));
  const paint = painter(process.stdout.isTTY === true && process.env.NO_COLOR === undefined);
  const lines = said.flatMap(({ name, findings }) => [
    paint(name, 'bold'),
    ...findings.flatMap((f) => findingLines(f, paint, true)),
  ]);
  process.stdout.write(values.json ? `${JSON.stringify({ schema: 1, logs: said })}\n` : `${lines.join('\n')}\n`);
  return exitCodes.nothingFails;
}
