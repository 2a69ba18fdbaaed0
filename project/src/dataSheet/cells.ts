import { nodeAt } from '../document/nodes.ts';
import { asked, echo, type Path, type Problem, refused } from '../document/problem.ts';
import { parseQuantity, refusalWords } from '../quantity/index.ts';
import type { Entered } from '../schema/entered.ts';
import { columns, type Heading } from './columns.ts';

/** Signs that makers print where a unit does not run. */
const blanks: readonly string[] = ['', '-', '–', '—', 'n/a', 'na', 'n.a.'];
export const isBlank = (cell: string): boolean => blanks.includes(cell.toLowerCase());

type Cell<T> = { readonly value?: T; readonly problems: readonly Problem[] };

/** One of a column's few words. */
export function wordIn(heading: Heading, cell: string, at: Path): Cell<string> {
  const words = columns[heading.id].words ?? {};
  const found = Object.keys(words).find((w) => words[w]?.includes(cell.toLowerCase()));
  if (found !== undefined) return { value: found, problems: [] };
  const mend = `Write one of: ${Object.values(words)
    .map(([w]) => w)
    .join(', ')}.`;
  return { problems: [refused('not-an-option', at, mend, { found: echo(cell) })] };
}

/** A number with the unit of its column's head, or its own. */
export function numberIn(heading: Heading, cell: string, at: Path): Cell<number> {
  const { kind, example } = columns[heading.id];
  if (kind === undefined) throw new Error(`assert: ${heading.id} is no quantity`);
  const parsed = parseQuantity(cell, kind, heading.unit === undefined ? {} : { bareUnit: heading.unit });
  if (parsed.ok) return { value: parsed.value, problems: [] };
  const meant = plausibleOf(heading.id, parsed.readings ?? []);
  if (meant) return { value: meant.value, problems: [] };
  const found = { found: echo(cell) };
  if (parsed.code === 'ambiguous' && /[\d.]$/.test(cell) && heading.unit === undefined && !cell.includes(','))
    return { problems: [refused('wrong-unit', at, `It has no unit. Head the column like: ${example}.`, found)] };
  if (parsed.readings?.length)
    return {
      problems: [
        refused(
          'wrong-type',
          at,
          `It may mean ${parsed.readings.map((r) => r.text).join(' or ')}. Write which.`,
          found,
        ),
      ],
    };
  return { problems: [refused('wrong-type', at, refusalWords(cell, parsed, kind), found)] };
}

/** `24,000` in a column of Btu/h: no unit gives 24 of them, so only one of the two readings is meant. */
function plausibleOf<R extends { readonly value: number }>(field: string, readings: readonly R[]): R | undefined {
  const plausible = nodeAt(['candidates', 'unit', 'rows', 'row', field])?.node.meta.plausible;
  if (!plausible) return undefined;
  const [only, ...others] = readings.filter((r) => r.value >= plausible.min && r.value <= plausible.max);
  return others.length === 0 ? only : undefined;
}

/** A number as the document keeps it, held against what its field takes and what is plausible. */
export function enteredIn(field: string, value: number, as: string, at: Path): Cell<Entered> {
  const node = nodeAt(['candidates', 'unit', 'rows', 'row', field])?.node;
  if (!node) throw new Error(`assert: a row has no field ${field}`);
  const entered: Entered = { value, known: 'nameplate', as };
  if (!node.schema.safeParse(entered).success)
    return {
      problems: [refused('impossible', at, 'No unit gives that. Check the number and its sign.', { found: as })],
    };
  const { plausible } = node.meta;
  const odd = plausible && (value < plausible.min || value > plausible.max);
  return {
    value: entered,
    problems: odd
      ? [
          asked('implausible', at, 'Check the number and its unit; it was taken as it is.', {
            found: as,
            allowed: plausible,
          }),
        ]
      : [],
  };
}
