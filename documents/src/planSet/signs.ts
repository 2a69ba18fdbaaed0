import type { Status } from '@kneewall/engine';

/** A sign and a word for each status, worst first: neither needs colour, and a copy of a copy keeps both. */
export const statusSigns: readonly { readonly status: Status; readonly words: string }[] = [
  { status: 'fails', words: '✗ fails' },
  { status: 'tight', words: '△ tight' },
  { status: 'unknown', words: '? unknown' },
  { status: 'ok', words: '✓ ok' },
];

export const signOf = (status: Status): string => statusSigns.find((s) => s.status === status)?.words ?? status;
