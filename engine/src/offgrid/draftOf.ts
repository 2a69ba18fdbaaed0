import type { Draft } from '../plan/judge.ts';
import { attempt } from '../plan/outcome.ts';
import { recordWorking, type Working, type WorkingRecorder } from '../plan/working.ts';

/** A draft with the working that ends in its value. */
export type Found = { readonly draft: Draft; readonly working: Working };

/** A draft of this trade, its value from a computation that records its steps. */
export function found(
  of: Omit<Draft, 'subject' | 'value' | 'working'>,
  value: (recorder: WorkingRecorder) => Extract<Draft['value'], { ok: true }>['value'],
): Found {
  const { recorder, steps } = recordWorking();
  return {
    draft: { ...of, subject: 'power', value: attempt(() => value(recorder)), working: `offgrid/${of.id}` },
    working: steps,
  };
}
