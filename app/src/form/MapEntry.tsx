import type { SchemaNode } from '@kneewall/project';
import { useEffect, useRef, useState } from 'react';
import { Button } from '../look/Button.tsx';
import { useRoute } from '../route/route.ts';
import { useUnits } from '../services.ts';
import { entryName } from './entryName.ts';
import { Fields } from './GroupFields.tsx';
import { useReadingEntry } from './readingEntry.ts';
import { useField } from './useField.ts';

type Props = {
  readonly node: SchemaNode;
  readonly path: readonly string[];
  readonly id: string;
  readonly entry: Readonly<Record<string, unknown>>;
  readonly depth: number;
  readonly startOpen: boolean;
};

/** One entry of a list. Its fields are drawn only while it is open: some lists are long. */
export function MapEntry({ node, path, id, entry, depth, startOpen }: Props) {
  const units = useUnits();
  const { change, barred } = useField(path);
  const wanted = useRoute().field?.startsWith(`${path.join('.')}.`) === true;
  const [open, setOpen] = useState(startOpen);
  const summary = useRef<HTMLElement>(null);
  useEffect(() => {
    if (startOpen) summary.current?.focus();
  }, [startOpen]);
  const name = useReadingEntry(path, entry) ?? entryName(node, id, entry, units);
  const shown = open || wanted;
  return (
    <details className="fold entry" open={shown} onToggle={(e) => setOpen(e.currentTarget.open)}>
      <summary ref={summary}>
        <span className="fold-title">{name}</span>
      </summary>
      {shown && (
        <div className="entry-body">
          <Fields node={node} path={path} depth={depth} />
          <Button
            look="quiet"
            disabled={barred}
            onClick={(e) => {
              // The button goes with its entry; who works by keys goes on at the one that adds.
              e.currentTarget.closest('.entries-body')?.querySelector<HTMLElement>(':scope > button')?.focus();
              change(undefined);
            }}
          >
            Remove {name}
          </Button>
        </div>
      )}
    </details>
  );
}
