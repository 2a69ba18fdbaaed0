import type { SchemaNode } from '@kneewall/project';
import { SelectField } from './SelectField.tsx';
import { useField } from './useField.ts';

/** Yes, no, or not said, which counts as no. */
export function FlagField({ node, path }: { node: SchemaNode; path: readonly string[] }) {
  const field = useField(path);
  const { value } = field;
  const shown = value === undefined ? '' : value === true ? 'yes' : 'no';
  return (
    <SelectField node={node} path={path} field={field} shown={shown} stored={(option) => option === 'yes'}>
      <option value="">Don’t know. Assumed: no</option>
      <option value="yes">Yes</option>
      <option value="no">No</option>
    </SelectField>
  );
}
