import type { Entered } from '../schema/entered.ts';
import type { FieldMeta } from '../schema/field.ts';
import type { Project } from '../schema/project.ts';
import { ductLineProblems } from './ductLines.ts';
import type { SchemaNode } from './nodes.ts';
import { rootNode } from './nodes.ts';
import { isDay, paperProblems } from './paperProblems.ts';
import { powerProblems } from './powerProblems.ts';
import type { Path, Problem } from './problem.ts';
import { asked, echo } from './problem.ts';
import { outlineProblems } from './roomOutlines.ts';
import { rowOrder } from './rowOrder.ts';
import { wayProblems } from './wayLength.ts';

/** What is kept in a valid document and yet worth a question: implausible values, dangling references, unknown fields, speeds out of order, ducts drawn longer than entered, prices of duct without a size, outlines crossed or larger than entered, a day of other than 24 hours. */
export function inspect(project: Project): Problem[] {
  const problems: Problem[] = [];
  look(rootNode, project as Tree, [], (p) => problems.push(p), project as Tree);
  return [
    ...problems,
    ...rowOrder(project),
    ...wayProblems(project),
    ...ductLineProblems(project),
    ...outlineProblems(project),
    ...powerProblems(project),
    ...paperProblems(project),
  ];
}

type Tree = Readonly<Record<string, unknown>>;
type Report = (problem: Problem) => void;

function look(node: SchemaNode, value: Tree, path: Path, report: Report, whole: Tree): void {
  for (const [key, below] of Object.entries(value)) {
    if (below === undefined) continue;
    const at = [...path, key];
    const child = node.children[key];
    if (!child) {
      const known = (path.length === 0 && key === 'schema') || key === 'order';
      if (!known)
        report(asked('unknown-field', at, 'Kept as it is; this version does not read it.', { found: echo(below) }));
    } else lookAtField(child, below, at, report, whole);
  }
}

function lookAtField(node: SchemaNode, value: unknown, path: Path, report: Report, whole: Tree): void {
  if (node.meta.node === 'group') look(node, value as Tree, path, report, whole);
  else if (node.meta.node === 'map')
    for (const [id, entry] of Object.entries(value as Tree)) look(node, entry as Tree, [...path, id], report, whole);
  else if (node.meta.node === 'quantity') plausible(node.meta, value as Entered, path, report);
  else if (node.meta.node === 'date' && !isDay(String(value)))
    report(
      asked('implausible', path, 'The calendar has no such day: enter year, month and day again.', {
        found: echo(value),
      }),
    );
  else if (node.meta.node === 'reference') resolves(node.meta, String(value), path, report, whole);
}

function plausible(meta: FieldMeta, entered: Entered, path: Path, report: Report): void {
  const { plausible: allowed } = meta;
  if (!allowed) return;
  const numbers = typeof entered.value === 'number' ? [entered.value] : [entered.value.low, entered.value.high];
  const odd = numbers.find((n) => n < allowed.min || n > allowed.max);
  if (odd !== undefined)
    report(asked('implausible', path, `Check the number and its unit: ${meta.label}.`, { found: odd, allowed }));
}

function resolves(meta: FieldMeta, id: string, path: Path, report: Report, whole: Tree): void {
  const targets = entriesAt(whole, (meta.to ?? '').split('.'));
  if (!targets.has(id))
    report(
      asked('dangling-reference', path, `Choose another; there is no "${echo(id)}" any more.`, { found: echo(id) }),
    );
}

/** The ids below a dotted place, `*` standing for any entry. */
function entriesAt(tree: unknown, keys: readonly string[]): Set<string> {
  if (tree === null || typeof tree !== 'object') return new Set();
  const [key, ...rest] = keys;
  if (key === undefined) return new Set(Object.keys(tree));
  if (key !== '*') return entriesAt((tree as Tree)[key], rest);
  return new Set(Object.values(tree).flatMap((below) => [...entriesAt(below, rest)]));
}
