import type { ResolvedProject } from '@kneewall/project';
import type { Draft } from '../plan/judge.ts';
import type { Working } from '../plan/working.ts';
import type { Candidate } from './result.ts';

export type Found = { readonly draft: Draft; readonly working: Working };
/** What every finding about one candidate shares. */
export type About = {
  readonly candidate: Candidate;
  readonly project: ResolvedProject;
  readonly holdPoint: Draft['holdPoint'];
  readonly item?: string;
  readonly bought: boolean;
};

/** The part of a draft that is the same for all findings about a candidate. */
export const draftOf = (about: About, word: string) => ({
  id: `${word}:${about.candidate.id}`,
  subject: about.candidate.id,
  holdPoint: about.holdPoint,
  working: `equipment/${word}:${about.candidate.id}`,
  ...(about.item ? { item: about.item } : {}),
});
