import type { SchemaNode } from '@kneewall/project';
import { useState } from 'react';
import { FieldFrame } from './FieldFrame.tsx';
import { hoursFrom } from './hoursFrom.ts';
import { fieldId, useField } from './useField.ts';
import { useKeepTyped } from './useKeepTyped.ts';

/** A number for each hour of the day, typed or pasted in a row. Kept on leaving the box; what is no number stays in it, and says so. */
export function HoursField({ node, path }: { node: SchemaNode; path: readonly string[] }) {
  const { meta } = node;
  const { value, change, barred, problems, saving } = useField(path);
  const [draft, setDraft] = useState<string | undefined>();
  const stands = Array.isArray(value) ? value.join(' ') : '';
  const id = fieldId(path);
  const given = hoursFrom(draft ?? stands);
  const commit = () => {
    if (draft === undefined || given === 'not-numbers') return;
    if (change(given.length === 0 ? undefined : given)) setDraft(undefined);
  };
  useKeepTyped(commit);
  return (
    <FieldFrame meta={meta} path={path} saving={saving} problems={problems} empty={value === undefined}>
      <textarea
        id={id}
        className="box"
        rows={3}
        disabled={barred}
        inputMode="text"
        aria-describedby={`${id}-help ${id}-count`}
        value={draft ?? stands}
        onChange={(e) => setDraft(e.target.value)}
        onBlur={commit}
      />
      <p className="field-help" id={`${id}-count`} aria-live="polite">
        {given === 'not-numbers'
          ? 'Only numbers, with a blank or a new line between them.'
          : given.length > 0 && `${given.length} of 24 hours.`}
      </p>
    </FieldFrame>
  );
}
