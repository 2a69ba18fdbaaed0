import { type Given, inOrder, type Missing, type Range, type ResolvedProject } from '@kneewall/project';
import { attempt, required, unresolved } from '../plan/outcome.ts';
import { spread } from '../plan/scenario.ts';
import { choiceOf } from './papers.ts';
import { type QuoteRow, type QuoteScope, quoteScopes } from './result.ts';

const plainRange = (x: Range): Range => ({ low: x.low, likely: x.likely, high: x.high });

/**
 * Every quote brought to the whole job: what is not written in it counts at what it would cost from somebody else (the
 * unit at its own price). A quote without an amount, with nothing marked, or short of a price has no total and says what
 * is missing. Prices are independent of each other; their ranges join as the root of the sum of squares.
 */
export function quoteRows(project: ResolvedProject, unit: string | undefined): QuoteRow[] {
  return inOrder(project.paperwork)
    .filter(([, p]) => choiceOf(p.kind, 'permit') === 'quote')
    .map(([id, p]) => rowOf(project, id, p, p.unit ?? unit));
}

function rowOf(
  project: ResolvedProject,
  id: string,
  { name, amount, quote }: ResolvedProject['paperwork'][string],
  unit: string | undefined,
): QuoteRow {
  const holds = quoteScopes.filter((s) => quote[s]);
  const out = quoteScopes.filter((s) => !quote[s]);
  const price = (scope: QuoteScope): Given | Missing =>
    scope === 'unit' ? unitPrice(project, unit) : project.work.scopePrices[scope];
  const prices = out.map((scope) => ({ scope, given: price(scope) }));
  const sums = attempt(() => {
    if ('missing' in amount || !(amount.likely > 0)) return unresolved('missing', `paperwork.${id}.amount`);
    if (holds.length === 0) return unresolved('missing', `paperwork.${id}.quote.unit`);
    const short = prices.flatMap(({ given }) => ('missing' in given ? [given.path] : []));
    if (short.length > 0) return unresolved('missing', ...short);
    return spread((s) => {
      const left = prices.reduce((sum, { given }) => sum + s.of(given), 0);
      return { left, total: s.of(amount) + left };
    });
  });
  return {
    id,
    name: name?.trim() || id,
    ...('missing' in amount ? {} : { amount: plainRange(amount) }),
    holds,
    missing: prices.map(({ scope, given }) => ({
      scope,
      path: given.path,
      ...('missing' in given ? {} : { price: plainRange(given) }),
    })),
    left: attempt(() => plainRange(required(sums).left)),
    total: attempt(() => plainRange(required(sums).total)),
    ...('missing' in quote.warrantyYears ? {} : { warrantyYears: quote.warrantyYears.likely }),
  };
}

const unitPrice = (project: ResolvedProject, id: string | undefined): Given | Missing =>
  (id === undefined ? undefined : project.candidates[id]?.price) ?? { path: 'candidates', missing: true };
