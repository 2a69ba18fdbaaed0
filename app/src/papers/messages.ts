import type { Letters, PartId, PrintProgress, SetInput, SheetMarks } from '@kneewall/documents/planSet';

/** What a plan set is made from, how large its letters are, and which parts of it; `only: 'marks'`: nothing is printed. */
export type ToPrint = SetInput & {
  readonly letters: Letters;
  readonly parts: readonly PartId[];
  readonly only?: 'marks';
};

export type Printed =
  | { readonly type: 'printing'; readonly progress: PrintProgress }
  | { readonly type: 'printed'; readonly bytes: Uint8Array<ArrayBuffer>; readonly marks: SheetMarks }
  | { readonly type: 'marked'; readonly marks: SheetMarks }
  | { readonly type: 'failed'; readonly why: string };
