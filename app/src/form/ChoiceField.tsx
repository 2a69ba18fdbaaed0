import type { SchemaNode } from '@kneewall/project';
import { FieldFrame } from './FieldFrame.tsx';
import { fieldId, useField } from './useField.ts';

/** One of a few answers, and always "don't know". */
export function ChoiceField({ node, path }: { node: SchemaNode; path: readonly string[] }) {
  const { meta } = node;
  const { value, change, barred, problems, saving } = useField(path);
  const options = meta.options ?? {};
  const fallback = typeof meta.default === 'string' ? options[meta.default] : undefined;
  return (
    <FieldFrame meta={meta} path={path} saving={saving} problems={problems} empty={value === undefined}>
      <select
        id={fieldId(path)}
        className="box"
        disabled={barred}
        aria-describedby={meta.help ? `${fieldId(path)}-help` : undefined}
        value={typeof value === 'string' ? value : ''}
        onChange={(e) => change(e.target.value === '' ? undefined : e.target.value)}
      >
        <option value="">{fallback ? `Don’t know. Assumed: ${fallback}` : 'Don’t know'}</option>
        {Object.entries(options).map(([key, words]) => (
          <option key={key} value={key}>
            {words}
          </option>
        ))}
      </select>
    </FieldFrame>
  );
}
