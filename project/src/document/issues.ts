import type * as z from 'zod/mini';
import { understood } from '../quantity/index.ts';
import type { FieldMeta } from '../schema/field.ts';
import { nodeAt } from './nodes.ts';
import type { Path, Problem, ProblemCode } from './problem.ts';
import { echo, refused } from './problem.ts';
import { valueAt } from './valueAt.ts';

type Issue = z.core.$ZodIssue;

/**
 * zod's issues as problems of ours: code, place, what was found, what is allowed, what to do. `whole` is what stands,
 * or is to stand, at `place` in the document.
 */
export function issueProblems(error: z.core.$ZodError, whole: unknown, place: Path = []): Problem[] {
  return error.issues.map((issue) => {
    const plain = innermost(issue);
    const path = plain.path.filter((k): k is string | number => typeof k !== 'symbol');
    return problemFrom(plain, [...place, ...path], valueAt(whole, path));
  });
}

/** Of the branches of a union, the issue that lies deepest is the one the person meant. */
function innermost(issue: Issue): Issue {
  if (issue.code !== 'invalid_union') return issue;
  const branches = issue.errors
    .flat()
    .map((inner) => innermost({ ...inner, path: [...issue.path, ...inner.path] } as Issue));
  const ranked = branches.sort((a, b) => b.path.length - a.path.length || rank(b) - rank(a));
  return ranked[0] ?? issue;
}

/** A limit or an order says more than a type that did not fit. */
const rank = (issue: Issue): number => (issue.code === 'invalid_type' ? 0 : 1);

function problemFrom(issue: Issue, path: Path, value: unknown): Problem {
  const meta = metaAt(path);
  const label = meta?.label ?? 'This';
  const found = echo(value);
  if (typeof value === 'number' && !Number.isFinite(value))
    return refused('not-finite', path, `${label} has to be a number that can be written down.`, { found });
  if (issue.code === 'too_small')
    return refused(
      'impossible',
      path,
      `${label} ${issue.inclusive ? 'cannot be below' : 'has to be more than'} ${limitText(issue.minimum, meta)}.`,
      {
        found,
        allowed: { min: issue.minimum },
      },
    );
  if (issue.code === 'too_big')
    return refused('impossible', path, `${label} cannot be above ${limitText(issue.maximum, meta)}.`, {
      found,
      allowed: { max: issue.maximum },
    });
  if (issue.code === 'invalid_value')
    return refused('not-an-option', path, `${label} is one of: ${issue.values.join(', ')}.`, {
      found,
      allowed: issue.values,
    });
  if (issue.code === 'invalid_key')
    return refused('bad-id', path, 'Use small letters, digits and hyphens for an id.', { found: path.at(-1) });
  const code: ProblemCode = issue.code === 'custom' ? 'range-order' : 'wrong-type';
  const mend =
    code === 'range-order' ? `${label}: low, likely and high have to rise.` : `${label} has the wrong form here.`;
  return refused(code, path, mend, { found, ...(issue.code === 'invalid_type' ? { allowed: issue.expected } : {}) });
}

/** The nearest field above a place, which is what the person sees on the form. */
function metaAt(path: Path): FieldMeta | undefined {
  for (let n = path.length; n > 0; n--) {
    const found = nodeAt(path.slice(0, n));
    if (found) return found.node.meta;
  }
  return undefined;
}

/** A limit as people write it, in both systems: the document's own unit is not always theirs. */
const limitText = (limit: number | bigint, meta: FieldMeta | undefined): string =>
  meta?.kind === undefined ? String(limit) : understood(Number(limit), meta.kind);
