import { check } from './commands/check.ts';
import { importFile } from './commands/importFile.ts';
import { log } from './commands/log.ts';
import { newProject } from './commands/newProject.ts';
import { papers } from './commands/papers.ts';
import { serve } from './commands/serve.ts';
import { study } from './commands/study.ts';
import { year } from './commands/year.ts';
import { exitCodes, Refused } from './exit.ts';
import { problemLines } from './print/problems.ts';

const usage = `Kneewall plans, builds and proves a ducted heat pump in a small house.

  kneewall check FILE [--json] [--quick | --long] [--units us|si]
      What holds, what is tight, what fails, and what would mend it.
  kneewall year FILE [--json] [--csv OUT] [--step SECONDS] [--winters]
                     [--units us|si]
      The house through a year: heat, cooling, attic, and what it does alone;
      with --winters also twenty winters on own power (some minutes), and the
      recorded ones where the project has any.
  kneewall papers FILE --out DIR [--units us|si] [--letters plain|large]
                       [--only PARTS] [--quick | --long]
      The plan set as a PDF to print at 100 %, each drawing and each list by
      itself, and the plan as JSON. PARTS, with commas between: checks, numbers,
      drawings, buy, work, readings, workings, sources.
  kneewall study FILE|DIR --out FILE [--samples N] [--seed S] [--workers W]
      The loads of many houses, each as this one may be: percentiles, and what
      would be worth knowing.
  kneewall new FILE [--from DEMO | --ask [--units us|si]]
      A new project: empty, copied from a demo (tern-ledge, juniper-flat), or
      from a handful of answers asked here, with what they already say.
  kneewall import weather FILE --into PROJECT [--format KIND]
      Takes a weather year into a project. The project is unchanged when it fails.
  kneewall import recorded FILE... --into PROJECT [--format KIND]
      Takes measured years, one file each, for the winters of own power.
  kneewall import log FILE --into PROJECT [--map QUANTITY=COLUMN:UNIT]... [--days ORDER] [--clock KIND]
  kneewall log FILE [--json] [--units us|si]
      What the logs of a project say: the house's loss, the unit's power, from
      which day something changed, and what a log cannot tell.
  kneewall import datasheet FILE --into PROJECT [--unit ID]
      Takes the rows of a unit's data sheet (CSV, units in the heads) into a
      project, and says what the sheet leaves open.
  kneewall import prices FILE --into PROJECT [--columns name=HEAD,price=HEAD]
      Takes prices out of a table (CSV, any separator) into a project; rows that
      cannot be used are listed with their place.
  kneewall serve [--port PORT]
      Serves the app to this machine.
`;

const commands: Readonly<Record<string, (args: readonly string[]) => Promise<number>>> = {
  check,
  log,
  new: newProject,
  import: importFile,
  papers,
  serve,
  study,
  year,
};

async function main(): Promise<number> {
  const [name, ...args] = process.argv.slice(2);
  if (name === undefined || name === 'help' || name === '--help') {
    process.stdout.write(usage);
    return name === undefined ? exitCodes.refused : exitCodes.nothingFails;
  }
  const command = commands[name];
  if (!command) throw new Refused(`There is no command "${name.slice(0, 40)}".\n\n${usage}`);
  return await command(args);
}

process.on('SIGINT', () => process.exit(exitCodes.interrupted));

try {
  process.exitCode = await main();
} catch (thrown) {
  if (!(thrown instanceof Refused)) {
    const name = thrown instanceof Error ? thrown.message.split('\n')[0] : 'unknown';
    process.stderr.write(`Kneewall stopped on a fault of its own: ${name}\nNothing was changed.\n`);
    process.exitCode = exitCodes.fault;
  } else {
    process.stderr.write(
      `${thrown.message}\n${problemLines(thrown.problems).join('\n')}${thrown.problems.length ? '\n' : ''}`,
    );
    process.exitCode = exitCodes.refused;
  }
}
