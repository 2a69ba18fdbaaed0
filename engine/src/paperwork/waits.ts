import { inOrder, type ResolvedProject } from '@kneewall/project';
import { unresolved } from '../plan/outcome.ts';
import { choiceOf, dayNumber } from './papers.ts';
import type { Awaited, Paper } from './result.ts';

/** The day on which there will be an answer, counted from 1970; undefined where the day of asking or the wait is not entered. */
export const comesOn = ({ asked, waits }: Paper): number | undefined => {
  const from = asked === undefined ? undefined : dayNumber(asked);
  return from === undefined || waits === undefined ? undefined : from + waits;
};

/** What is asked for and not in hand yet, where it is known when it comes. */
export const awaitedOf = (papers: readonly Paper[]): Awaited[] =>
  papers.flatMap((p) => {
    const comes = comesOn(p);
    const open = p.status === 'open' || p.status === 'asked';
    if (!open || comes === undefined || (p.kind !== 'permit' && p.kind !== 'inspection')) return [];
    return [{ id: p.id, name: p.name, kind: p.kind, comes }];
  });

/** The last day to order with the first delivery that brings what comes from the unit's dealer. */
export function orderDay({ work }: ResolvedProject): string {
  const bring = inOrder(work.deliveries).filter(([, d]) => {
    const brings = choiceOf(d.brings, 'all');
    return brings === 'all' || brings === 'dealer';
  });
  const known = bring.flatMap(([, d]) => {
    const day = dayNumber(d.orderBy ?? '');
    const comes = dayNumber(d.day ?? '');
    if (day !== undefined) return [day];
    return comes === undefined || 'missing' in d.lead ? [] : [Math.floor(comes - d.lead.likely / 86_400)];
  });
  const [first] = bring;
  if (known.length === 0)
    return unresolved('missing', first ? `work.deliveries.${first[0]}.orderBy` : 'work.deliveries');
  return new Date(Math.min(...known) * 864e5).toISOString().slice(0, 10);
}
