import type { Entered } from '@kneewall/project';
import { entryId, orderAfter } from '../../../session/newIds.ts';

type Entries = Readonly<Record<string, { readonly order?: string | undefined }>>;
type Edit = { readonly path: string[]; readonly after: unknown };

/** What is written for one more reading, after all others: readings are appended, never overwritten. */
export function readingEdit(
  taken: Entries,
  reading: {
    readonly visit: string;
    readonly expected: string;
    readonly means: string;
    readonly repeats: number;
    readonly value: Entered;
    readonly day?: string;
  },
): Edit {
  const { repeats, ...rest } = reading;
  const times = repeats > 1 ? { repeats: { value: repeats, known: 'measured' } } : {};
  return {
    path: ['readings', entryId('Reading', taken)],
    after: { order: lastOrder(taken), ...rest, ...times },
  };
}

/** What is written for one more visit. */
export const visitEdit = (visits: Entries, day: string): Edit => ({
  path: ['visits', entryId('Visit', visits)],
  after: { order: lastOrder(visits), day },
});

const lastOrder = (entries: Entries): string =>
  orderAfter(
    Object.values(entries)
      .flatMap((e) => e.order ?? [])
      .sort()
      .at(-1),
  );
