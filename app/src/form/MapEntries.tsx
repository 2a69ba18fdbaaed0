import { inOrder, type SchemaNode } from '@kneewall/project';
import { type ReactNode, useState } from 'react';
import { Button } from '../look/Button.tsx';
import { useRoute } from '../route/route.ts';
import { entryId, orderAfter } from '../session/newIds.ts';
import { MapEntry } from './MapEntry.tsx';
import { fieldId, useField } from './useField.ts';
import './MapEntries.css';

type Props = {
  readonly node: SchemaNode;
  readonly path: readonly string[];
  readonly depth: number;
  /** Another way to fill the list, below it. */
  readonly children?: ReactNode;
};
type Entries = Readonly<Record<string, { readonly order?: string }>>;

/** A list: its entries by name, one button that adds, one in each that takes it away. */
export function MapEntries({ node, path, depth, children }: Props) {
  const { value } = useField(path);
  const field = useRoute().field ?? '';
  const dotted = path.join('.');
  const wanted = field === dotted || field.startsWith(`${dotted}.`);
  const [open, setOpen] = useState(false);
  const entries = (value as Entries | undefined) ?? {};
  const count = Object.keys(entries).length;
  if (depth === 0) return <EntryList node={node} path={path} depth={depth} entries={entries} />;
  return (
    <details className="fold" id={fieldId(path)} open={open || wanted} onToggle={(e) => setOpen(e.currentTarget.open)}>
      <summary>
        <span className="fold-title">{node.meta.label}</span>
        <span className="fold-count">{count === 0 ? 'none' : count}</span>
      </summary>
      {node.meta.help && <p className="field-help">{node.meta.help}</p>}
      {(open || wanted) && (
        <EntryList node={node} path={path} depth={depth} entries={entries}>
          {children}
        </EntryList>
      )}
    </details>
  );
}

function EntryList({ node, path, depth, entries, children }: Props & { readonly entries: Entries }) {
  const { change, barred } = useField(path);
  const [latest, setLatest] = useState('');
  const one = node.meta.one ?? 'Entry';
  const ordered = inOrder(entries);
  const add = () => {
    const id = entryId(one, entries);
    const order = orderAfter(ordered.at(-1)?.[1].order);
    if (change({ ...entries, [id]: { order } })) setLatest(id);
  };
  return (
    <div className="entries-body">
      <ul className="entries-list">
        {ordered.map(([id, entry]) => (
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
      {children}
    </div>
  );
}
