import { inOrder, type SchemaNode } from '@kneewall/project';
import { useState } from 'react';
import { Button } from '../look/Button.tsx';
import { useRoute } from '../route/route.ts';
import { entryId, orderAfter } from '../session/newIds.ts';
import { MapEntry } from './MapEntry.tsx';
import { fieldId, useField } from './useField.ts';
import './MapEntries.css';

type Props = { readonly node: SchemaNode; readonly path: readonly string[]; readonly depth: number };
type Entries = Readonly<Record<string, { readonly order?: string }>>;

/** A list: its entries by name, one button that adds, one in each that takes it away. */
export function MapEntries({ node, path, depth }: Props) {
  const { value, change, barred } = useField(path);
  const field = useRoute().field ?? '';
  const dotted = path.join('.');
  const wanted = field === dotted || field.startsWith(`${dotted}.`);
  const [open, setOpen] = useState(depth === 0);
  const [latest, setLatest] = useState('');
  const entries = inOrder((value as Entries | undefined) ?? {});
  const one = node.meta.one ?? 'Entry';
  const add = () => {
    const taken = (value as Entries | undefined) ?? {};
    const id = entryId(one, taken);
    const order = orderAfter(entries.at(-1)?.[1].order);
    if (change({ ...taken, [id]: { order } })) setLatest(id);
  };
  return (
    <details
      className="fold entries"
      id={fieldId(path)}
      open={open || wanted}
      onToggle={(e) => setOpen(e.currentTarget.open)}
    >
      <summary>
        <span className="fold-title">{node.meta.label}</span>
        <span className="fold-count">{entries.length === 0 ? 'none' : entries.length}</span>
      </summary>
      {(open || wanted) && (
        <div className="entries-body">
          {node.meta.help && <p className="field-help">{node.meta.help}</p>}
          <ul className="entries-list">
            {entries.map(([id, entry]) => (
              <li key={id}>
                <MapEntry
                  node={node}
                  path={[...path, id]}
                  id={id}
                  entry={entry}
                  depth={depth + 1}
                  startOpen={id === latest}
                />
              </li>
            ))}
          </ul>
          <Button onClick={add} disabled={barred}>
            <span aria-hidden="true">+</span> Add: {one}
          </Button>
        </div>
      )}
    </details>
  );
}
