import type { SchemaNode } from '@kneewall/project';
import { FieldFrame } from './FieldFrame.tsx';
import { fieldId, useField } from './useField.ts';

/** Yes, no, or not said, which counts as no. */
export function FlagField({ node, path }: { node: SchemaNode; path: readonly string[] }) {
  const { meta } = node;
  const { value, change, barred, problems, saving } = useField(path);
  const shown = value === undefined ? '' : value === true ? 'yes' : 'no';
  return (
    <FieldFrame meta={meta} path={path} saving={saving} problems={problems} empty={value === undefined}>
      <select
        id={fieldId(path)}
        className="box"
        disabled={barred}
        aria-describedby={meta.help ? `${fieldId(path)}-help` : undefined}
        value={shown}
        onChange={(e) => change(e.target.value === '' ? undefined : e.target.value === 'yes')}
      >
        <option value="">Don’t know. Assumed: no</option>
        <option value="yes">Yes</option>
        <option value="no">No</option>
      </select>
    </FieldFrame>
  );
}
