import type * as z from 'zod/mini';
import type { Project } from '../schema/project.ts';
import { projectSchema, schemaVersion } from '../schema/project.ts';
import { inspect } from './inspect.ts';
import { issueProblems } from './issues.ts';
import { migrate } from './migrate.ts';
import type { Problem } from './problem.ts';
import { echo, refused } from './problem.ts';
import { scanJson } from './scan.ts';

export type Opened =
  | { readonly ok: true; readonly project: Project; readonly problems: readonly Problem[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

const no = (...problems: Problem[]): Opened => ({ ok: false, problems });

/**
 * Reads a project from the text of a file. Never throws. Anything that cannot be taken whole is refused with the
 * place and the mend; what is merely odd is kept and asked about. A newer document is refused for editing.
 */
export function openProject(text: string): Opened {
  // A byte order mark is the only thing dropped: some editors add one and it means nothing.
  const body = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (body.includes('\u0000'))
    return no(refused('not-text', [], 'This file is not text. Open a project saved by Kneewall.'));
  const found = scanJson(body);
  if (found) return no(found);
  let raw: unknown;
  try {
    raw = JSON.parse(body);
  } catch {
    return no(
      refused('not-json', [], 'The file is cut short or damaged. Open an earlier copy.', { found: placeOfBreak(body) }),
    );
  }
  return checkProject(raw);
}

/** The same for a value that is already parsed, as from the browser's own store. */
export function checkProject(raw: unknown): Opened {
  if (raw === null || typeof raw !== 'object' || Array.isArray(raw) || !('schema' in raw))
    return no(
      refused('not-a-project', [], 'Open a project file: it begins with a schema number.', { found: echo(raw) }),
    );
  const version = raw.schema;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
    return no(
      refused('not-a-project', ['schema'], 'The schema number is a whole number from 1.', { found: echo(version) }),
    );
  if (version > schemaVersion)
    return no(
      refused(
        'newer-version',
        ['schema'],
        'A newer Kneewall wrote this. Update, then open it; the file is unchanged.',
        {
          found: version,
          allowed: schemaVersion,
        },
      ),
    );
  const parsed = projectSchema.safeParse(migrate(raw as Record<string, unknown>));
  if (!parsed.success) return no(...issueProblems(parsed.error as z.core.$ZodError, raw));
  // The document itself goes on, not zod's copy, so that equal parts stay the same objects.
  const project = migrate(raw as Record<string, unknown>) as Project;
  return { ok: true, project, problems: inspect(project) };
}

/** Where a text stops being JSON, as a line number that an editor understands. */
function placeOfBreak(text: string): string {
  const lines = text.split('\n').length;
  return `${lines} ${lines === 1 ? 'line' : 'lines'}, ${text.length} characters`;
}
