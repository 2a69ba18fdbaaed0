import type { Letters, SetInput } from '@kneewall/documents/planSet';

/** What a plan set is made from, and how large its letters are. */
export type ToPrint = SetInput & { readonly letters: Letters };

export type Printed =
  | { readonly type: 'printed'; readonly bytes: Uint8Array<ArrayBuffer> }
  | { readonly type: 'failed'; readonly why: string };
