import type { SchemaNode } from '@kneewall/project';
import { itself, SelectField } from './SelectField.tsx';
import { useField } from './useField.ts';

/** One of a few answers, and always "don't know". */
export function ChoiceField({ node, path }: { node: SchemaNode; path: readonly string[] }) {
  const { meta } = node;
  const field = useField(path);
  const { value } = field;
  const options = meta.options ?? {};
  const fallback = typeof meta.default === 'string' ? options[meta.default] : undefined;
  return (
    <SelectField node={node} path={path} field={field} shown={typeof value === 'string' ? value : ''} stored={itself}>
      <option value="">{fallback ? `Don’t know. Assumed: ${fallback}` : 'Don’t know'}</option>
      {Object.entries(options).map(([key, words]) => (
        <option key={key} value={key}>
          {words}
        </option>
      ))}
    </SelectField>
  );
}
