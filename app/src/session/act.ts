import type { Edit } from '@kneewall/project';

/**
 * One act of the person: all its edits stand or fall together, and undo takes them back together. An `undo` or `redo`
 * is an act of its own with edits of its own, so that the log only ever grows.
 */
export type Act = {
  /** 1, 2, 3 … within a project on this device. */
  readonly number: number;
  readonly kind: 'do' | 'undo' | 'redo';
  readonly edits: readonly Edit[];
};

/** A change before it has a number: what shall stand where. */
export type Change = { readonly path: readonly string[]; readonly after: unknown };
