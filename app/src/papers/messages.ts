import type { Letters } from '@kneewall/documents/planSet';
import type { Plan } from '@kneewall/engine';
import type { Project, System } from '@kneewall/project';

export type ToPrint = {
  readonly plan: Plan;
  readonly project: Project;
  readonly units: System;
  readonly letters: Letters;
};

export type Printed =
  | { readonly type: 'printed'; readonly bytes: Uint8Array<ArrayBuffer> }
  | { readonly type: 'failed'; readonly why: string };
