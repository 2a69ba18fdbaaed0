import { type Problem, valueAt } from '@kneewall/project';
import { useCallback, useState } from 'react';
import { useServices, useSession } from '../services.ts';

export type FieldSaving = 'not-saved' | 'saved' | undefined;

/** One field of the document: what stands there, how to change it, and whether the last change of it is kept. */
export function useField(path: readonly string[]) {
  const { session } = useServices();
  const value = useSession((s) => valueAt(s.project, path));
  const barred = useSession((s) => s.barred !== undefined);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const dotted = path.join('.');
  const saving = useSession((s): FieldSaving => {
    if (s.saving.waiting.some((e) => e.record.edits.some((edit) => edit.path.join('.') === dotted))) return 'not-saved';
    return s.lastAct?.edits.some((edit) => edit.path.join('.') === dotted) ? 'saved' : undefined;
  });
  const change = useCallback(
    (after: unknown) => {
      const found = session.change([{ path: dotted.split('.'), after }]);
      setProblems(found);
      return found.length === 0;
    },
    [session, dotted],
  );
  /** What was refused is no longer what stands in the box. */
  const typing = useCallback(() => setProblems((p) => (p.length > 0 ? [] : p)), []);
  return { value, change, barred, problems, saving, typing };
}

/** The id of a field's control on the page. */
export const fieldId = (path: readonly string[]): string => `f-${path.join('.')}`;
