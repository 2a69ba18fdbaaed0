import { readFileSync } from 'node:fs';
import { basename, dirname, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import type { Row } from './row.ts';
import { sources } from './sources.ts';

/** `npm run validate -- [SOURCE] [--case FILE] [--json]`: prints every check; exit 1 when one is not ok or none ran. */
function main(): number {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { case: { type: 'string' }, json: { type: 'boolean', default: false } },
  });
  const [name] = positionals;
  const chosen = sources.filter((s) => name === undefined || s.id === name);
  const rows = values.case === undefined ? chosen.flatMap((s) => s.measure()) : rowsOfCase(name, values.case);
  if (values.json) process.stdout.write(`${JSON.stringify(rows)}\n`);
  else print(rows, values.case !== undefined);
  return rows.length > 0 && rows.every((r) => r.ok) ? 0 : 1;
}

/** Rows of one case file; a file that cannot be used says why and has none. */
function rowsOfCase(name: string | undefined, file: string): Row[] {
  try {
    if (!sources.some((s) => s.id === name && s.measureCase))
      throw new Error(
        `${name === undefined ? 'no source is named' : `“${name}” takes no case`}: one of these does: ${sources.flatMap((s) => (s.measureCase ? [s.id] : [])).join(', ')}`,
      );
    const text = readFileSync(resolve(file), 'utf8');
    const parsed: unknown = /\.json$/i.test(file) || /^\uFEFF?\s*[[{]/.test(text) ? JSON.parse(text) : text;
    return sources
      .filter((s) => s.id === name)
      .flatMap((s) => s.measureCase?.(parsed, dirname(resolve(file)), basename(file)) ?? []);
  } catch (thrown) {
    process.stderr.write(`${file}: ${thrown instanceof Error ? thrown.message : 'cannot be used'}\n`);
    return [];
  }
}

/** A line for each source, and one for each row that is not ok; of a case file, for every row. */
function print(rows: readonly Row[], all: boolean): void {
  for (const source of new Set(rows.map((r) => r.source))) {
    const mine = rows.filter((r) => r.source === source);
    const worst = Math.max(...mine.map((r) => Math.abs(r.error) / (r.tolerance || 1)));
    const bad = mine.filter((r) => !r.ok);
    console.log(
      `${bad.length === 0 ? 'ok  ' : 'FAIL'} ${source.padEnd(26)} ${String(mine.length).padStart(4)} rows, largest error ${(worst * 100).toFixed(1).padStart(6)} % of its tolerance`,
    );
    for (const r of all ? mine : bad)
      console.log(
        `${all && !r.ok ? 'FAIL' : '    '} ${r.case} ${r.field}: expected ${r.expected ?? `${r.low} to ${r.high}`} ${r.unit}, ours ${r.ours}, error ${r.error}, tolerance ${r.tolerance} (${r.known})`,
      );
  }
  console.log(`${rows.length} rows, ${rows.filter((r) => !r.ok).length} not ok`);
}

process.exitCode = main();
