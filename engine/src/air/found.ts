import type { Draft } from '../plan/judge.ts';
import type { Working } from '../plan/working.ts';

export type Found = { readonly draft: Draft; readonly working: Working };
