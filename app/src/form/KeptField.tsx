import type { SchemaNode } from '@kneewall/project';
import { useField } from './useField.ts';

/** What is entered elsewhere than in a box, a file. It is shown to be there and can be taken away. */
export function KeptField({ node, path }: { node: SchemaNode; path: readonly string[] }) {
  const { value, change, barred } = useField(path);
  if (value === undefined) return null;
  return (
    <div className="field">
      <p>
        <strong>{node.meta.label}</strong>: a file beside the project
      </p>
      <button type="button" className="button quiet" disabled={barred} onClick={() => change(undefined)}>
        Take {node.meta.label} away
      </button>
    </div>
  );
}
