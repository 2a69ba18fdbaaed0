import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { listsOf, type PartId, partIds, upkeepCalendar, workCalendar } from '@kneewall/documents';
import type { PrintProgress } from '@kneewall/documents/planSet';
import { evaluate } from '@kneewall/engine';
import { makeFolder, mayWrite, writeWhole } from '../disk.ts';
import { exitCodes, Refused } from '../exit.ts';
import { readOptions } from '../options.ts';
import { planWithJobs, shortJobs } from '../planWithJobs.ts';
import { readProject } from '../projectFile.ts';
import { unitsOf } from '../units.ts';

/**
 * `kneewall papers FILE --out DIR [--units us|si] [--letters plain|large] [--only PARTS] [--quick | --long]`: the plan set
 * as a PDF, each drawing and each list in a file of its own, the work for a calendar, and the plan as JSON.
 */
export async function papers(args: readonly string[]): Promise<number> {
  const { values, positionals } = readOptions(
    args,
    {
      out: { type: 'string' },
      units: { type: 'string' },
      letters: { type: 'string', default: 'plain' },
      only: { type: 'string' },
      quick: { type: 'boolean', default: false },
      long: { type: 'boolean', default: false },
    },
    1,
  );
  const [file = ''] = positionals;
  const { out, letters, only, quick, long } = values;
  if (out === undefined || out === '') throw new Refused('Say where the papers go: --out DIR. See "kneewall help".');
  if (letters !== 'plain' && letters !== 'large') throw new Refused('The letters are "plain" or "large".');
  if (quick && long) throw new Refused('Either --quick or --long, not both.');
  const parts = only === undefined ? partIds : partsNamed(only);
  const { project } = await readProject(file);
  const units = unitsOf(values.units, project);
  await makeFolder(out);
  // Better known before minutes of work than after them.
  for (const name of ['plan.json', 'plan-set.pdf']) await mayWrite(join(out, name), [file]);
  const plan = quick
    ? evaluate(project, {}, { units }).plan
    : await planWithJobs(project, file, units, shortJobs(long));
  const { planSet, printPlanSet } = await import('@kneewall/documents/planSet');
  const set = planSet({ plan, project, units }, letters, parts);
  const calendars = { 'work-plan.ics': workCalendar(plan), 'upkeep.ics': upkeepCalendar(plan) };
  const files: [string, string | Uint8Array][] = [
    ...set.sheets.map((s): [string, string] => [s.file, s.svg]),
    ...Object.entries(calendars).flatMap(([name, text]): [string, string][] =>
      text === undefined ? [] : [[name, text]],
    ),
    ...listsOf(plan, project, units).map((l): [string, string] => [l.file, l.csv]),
    ['plan.json', `${JSON.stringify({ schema: 1, ...plan })}\n`],
    ['plan-set.pdf', await printPlanSet(set, await paperFonts(), onTerminal())],
  ];
  for (const [name] of files) await mayWrite(join(out, name), [file]);
  const lines: string[] = [];
  for (const [name, content] of files) lines.push(await writeSheet(join(out, name), content));
  if (plan.trades.air?.flows.ok !== true)
    lines.push('Its flows are unknown so far; "kneewall check" says what is missing.');
  process.stdout.write(`${lines.join('\n')}\n`);
  return exitCodes.nothingFails;
}

/** `--only buy,work`: the parts of the set to be printed. */
function partsNamed(only: string): PartId[] {
  const named = only.split(',').map((name) => name.trim());
  const unknown = named.find((name) => !partIds.some((part) => part === name));
  if (unknown !== undefined)
    throw new Refused(`There is no part "${unknown.slice(0, 40)}" in a plan set. Its parts: ${partIds.join(', ')}.`);
  return partIds.filter((part) => named.includes(part));
}

/** The font of the papers, upright and bold, from the package that brings it. */
async function paperFonts(): Promise<{ normal: Uint8Array; bold: Uint8Array }> {
  const { resolve } = createRequire(import.meta.url);
  const font = (name: string) => readFile(resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`));
  return { normal: await font('DejaVuSansCondensed'), bold: await font('DejaVuSansCondensed-Bold') };
}

/** Writes a paper and says what became of one that was there. */
async function writeSheet(file: string, content: string | Uint8Array): Promise<string> {
  const bytes = Buffer.from(content);
  const there = existsSync(file) ? await readFile(file).catch(() => Buffer.alloc(0)) : undefined;
  if (there?.equals(bytes)) return `${file}: the same as before, left as it is.`;
  await writeWhole(file, bytes);
  return there === undefined ? `${file}: written.` : `${file}: written over the one that was there.`;
}

/** Says on a terminal which page is being made. */
function onTerminal(): ((progress: PrintProgress) => void) | undefined {
  if (process.stderr.isTTY !== true) return undefined;
  let said = '';
  return ({ step, done, total, part }) => {
    const now =
      step === 'laying'
        ? 'laying out the pages'
        : `page ${done + 1} of ${total}${part === '' ? '' : `: ${part}`}`.slice(0, 60);
    const last = step === 'drawing' && done + 1 === total;
    if (now === said) return;
    said = now;
    process.stderr.write(`\r\u001b[Kplan set: ${now}${last ? '\n' : ''}`);
  };
}
