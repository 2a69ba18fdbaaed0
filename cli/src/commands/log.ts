import { logEffectKind, placeOfTaking, type Taking, takeFromLog, takings } from '@kneewall/engine';
import { type Project, valueAt } from '@kneewall/project';
import { exitCodes, Refused } from '../exit.ts';
import { whatLogsTaught } from '../logsTaught.ts';
import { readOptions } from '../options.ts';
import { logLines } from '../print/log.ts';
import { findingLines } from '../print/plan.ts';
import { painter } from '../print/text.ts';
import { readProject, withPart, writeProject } from '../projectFile.ts';
import { unitsOf } from '../units.ts';

/**
 * `kneewall log FILE [--accept VALUES | --back VALUES] [--changes] [--json]`: what a log taught and what it changes, into the
 * plan or back out of it.
 */
export async function log(args: readonly string[]): Promise<number> {
  const { values, positionals } = readOptions(
    args,
    {
      json: { type: 'boolean', default: false },
      changes: { type: 'boolean', default: false },
      accept: { type: 'string' },
      back: { type: 'string' },
      units: { type: 'string' },
    },
    1,
  );
  const [file = ''] = positionals;
  if (values.accept !== undefined && values.back !== undefined) throw new Refused('Either --accept or --back.');
  const [asked, back] = [named(values.accept), named(values.back)];
  const { project } = await readProject(file);
  const units = unitsOf(values.units, project);
  const { plan, found, name } = await whatLogsTaught(project, file, units, values.changes ? [logEffectKind] : []);
  const chosen = plan.trades.equipment?.chosen;
  const unit = chosen?.ok ? chosen.value : undefined;
  const accepted = new Date().toISOString().slice(0, 10);
  const take = (taking: Taking) => takeFromLog(taking, found, { name, unit, accepted });
  // All there is: a log need not tell every value.
  const accepting = values.accept === 'all' ? asked.filter((t) => take(t) !== undefined) : asked;
  if (accepting.length === 0 && asked.length > 0) throw new Refused('The log tells nothing that can be taken in.');
  const took = accept(project, accepting, take);
  const next = back.reduce((before, taking) => withPart(before, placeOfTaking(taking, unit), () => undefined), took);
  if (next !== project) await writeProject(file, next);
  const { logEffect } = plan.season;
  const effect = logEffect.ok ? logEffect.value : undefined;
  const taken = takings.filter((t) => valueAt(next, placeOfTaking(t, unit)) !== undefined);
  const told = { name, found, taken, effect };
  const said = Object.entries(project.logs ?? {}).map(([id, entry]) => ({
    id,
    name: entry.name ?? id,
    findings: plan.findings.filter((f) => f.trade === 'commissioning' && f.subject === `log-${id}`),
  }));
  const paint = painter(process.stdout.isTTY === true && process.env.NO_COLOR === undefined);
  const lines = [
    ...said.flatMap((one) => [paint(one.name, 'bold'), ...one.findings.flatMap((f) => findingLines(f, paint, true))]),
    '',
    ...logLines(told, units, paint),
  ];
  process.stdout.write(
    values.json ? `${JSON.stringify({ schema: 1, logs: said, ...told })}\n` : `${lines.join('\n')}\n`,
  );
  return exitCodes.nothingFails;
}

/** `loss`, `power`, `household`, several with commas between, or `all`. */
function named(asked: string | undefined): readonly Taking[] {
  if (asked === undefined) return [];
  const words = asked === 'all' ? takings : asked.split(',');
  const known = takings.filter((t) => words.includes(t));
  if (known.length !== words.length) throw new Refused(`Values of a log are ${takings.join(', ')} or all.`);
  return known;
}

const accept = (
  project: Project,
  asked: readonly Taking[],
  take: (taking: Taking) => ReturnType<typeof takeFromLog>,
): Project =>
  asked.reduce((before, taking) => {
    const change = take(taking);
    if (!change) throw new Refused(`The log does not tell the ${taking}; the project is unchanged.`);
    return withPart(before, change.path, () => change.after);
  }, project);
