import type { SchemaNode } from '@kneewall/project';
import { useState } from 'react';
import { FieldFrame } from './FieldFrame.tsx';
import { fieldId, useField } from './useField.ts';
import { useKeepTyped } from './useKeepTyped.ts';

/** Words or a day. Kept on leaving the box, so that each is one act. */
export function TextField({ node, path }: { node: SchemaNode; path: readonly string[] }) {
  const { meta } = node;
  const { value, change, barred, problems, saving } = useField(path);
  const stands = typeof value === 'string' ? value : '';
  const [draft, setDraft] = useState<string | undefined>();
  const id = fieldId(path);
  const commit = () => {
    if (draft === undefined) return;
    if (change(draft.trim() === '' ? undefined : draft)) setDraft(undefined);
  };
  useKeepTyped(commit);
  const shared = {
    id,
    className: 'box',
    disabled: barred,
    'aria-describedby': meta.help ? `${id}-help` : undefined,
    value: draft ?? stands,
    onBlur: commit,
  };
  return (
    <FieldFrame meta={meta} path={path} saving={saving} problems={problems} empty={value === undefined}>
      {stands.length > 60 ? (
        <textarea {...shared} rows={3} onChange={(e) => setDraft(e.target.value)} />
      ) : (
        <input
          {...shared}
          type={meta.node === 'date' ? 'date' : 'text'}
          onChange={(e) => setDraft(e.target.value)}
          onKeyDown={(e) => e.key === 'Enter' && commit()}
        />
      )}
    </FieldFrame>
  );
}
