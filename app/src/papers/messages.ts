import type { Letters, PartId, SetInput } from '@kneewall/documents/planSet';

/** What a plan set is made from, how large its letters are, and which parts of it. */
export type ToPrint = SetInput & { readonly letters: Letters; readonly parts: readonly PartId[] };

export type Printed =
  | { readonly type: 'printed'; readonly bytes: Uint8Array<ArrayBuffer> }
  | { readonly type: 'failed'; readonly why: string };
