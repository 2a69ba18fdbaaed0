import type { TradeId } from '@kneewall/project';
import type { Draft } from './judge.ts';
import { attempt } from './outcome.ts';
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
