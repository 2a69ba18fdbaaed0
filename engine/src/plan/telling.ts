import type { Given, Missing, TradeId } from '@kneewall/project';
import type { Draft } from './judge.ts';
import { attempt, unresolved } from './outcome.ts';
import type { Drafts } from './trade.ts';
import { recordWorking, type Working, type WorkingRecorder } from './working.ts';

/** A draft with the working that ends in its value. */
export type Found = { readonly draft: Draft; readonly working: Working };

/** All of a draft but what its computation gives. */
export type DraftOf = Omit<Draft, 'subject' | 'value' | 'working'>;

/** Makes drafts of a trade about one subject, each value from a computation that records its steps. */
export const telling =
  (trade: TradeId, subject: string) =>
  (of: DraftOf, value: (recorder: WorkingRecorder) => Extract<Draft['value'], { ok: true }>['value']): Found => {
    const { recorder, steps } = recordWorking();
    return {
      draft: { ...of, subject, value: attempt(() => value(recorder)), working: `${trade}/${of.id}` },
      working: steps,
    };
  };

/** What a trade hands in: its drafts, and their workings by name. */
export const draftsOf = (found: readonly Found[]): Drafts => ({
  drafts: found.map((f) => f.draft),
  workings: Object.fromEntries(found.map((f) => [f.draft.working, f.working])),
});

/** A number of the project, taken down as it is read. */
export const entered =
  (symbol: string, field: Given | Missing) =>
  (rec: WorkingRecorder): number => {
    if ('missing' in field) return unresolved('missing', field.path);
    rec.given(symbol, field);
    return field.likely;
  };

/** 1 where the answer is one of the `good`, 0 for the others, by `source`. */
export const holding =
  <T extends string>(field: { readonly choice: T } | Missing, good: readonly T[], source: string) =>
  (rec: WorkingRecorder): number => {
    if (!('choice' in field)) return unresolved('missing', field.path);
    const holds = good.includes(field.choice) ? 1 : 0;
    rec.step('holds', 'table', {}, holds, '', source);
    return holds;
  };
