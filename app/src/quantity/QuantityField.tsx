import type { Entered, Known, Range, SchemaNode } from '@kneewall/project';
import { useState } from 'react';
import { FieldFrame } from '../form/FieldFrame.tsx';
import { useReadingKind } from '../form/readingEntry.ts';
import { fieldId, useField } from '../form/useField.ts';
import { Quantity, QuantityRange } from './Quantity.tsx';
import { QuantityBoxes } from './QuantityBoxes.tsx';
import { QuantityEcho } from './QuantityEcho.tsx';
import { QuantityMore } from './QuantityMore.tsx';
import { useQuantityDraft } from './useQuantityDraft.ts';
import './QuantityField.css';

/** One entered quantity: typed in the person's words, echoed in both systems, with how it is known. */
export function QuantityField({ node, path }: { node: SchemaNode; path: readonly string[] }) {
  const kind = useReadingKind(path) ?? node.meta.kind ?? 'number';
  const meta = { ...node.meta, kind };
  const field = useField(path);
  const entered = field.value as Entered | undefined;
  const [known, setKnown] = useState<Known>(meta.usually ?? 'estimated');
  const draft = useQuantityDraft(kind, entered, entered?.known ?? known, field.change);
  const id = fieldId(path);
  const type: typeof draft.type = (key, text) => {
    field.typing();
    draft.type(key, text);
  };
  return (
    <FieldFrame
      meta={meta}
      path={path}
      saving={field.saving}
      problems={field.problems}
      empty={!entered && field.problems.length === 0}
      assumed={assumedOf(meta.default, kind)}
    >
      <QuantityBoxes id={id} meta={meta} kind={kind} draft={{ ...draft, type }} barred={field.barred} />
      <QuantityEcho
        id={`${id}-echo`}
        read={draft.read}
        typing={draft.typing}
        entered={entered}
        meta={meta}
        choose={draft.choose}
      />
      <QuantityMore
        id={id}
        label={meta.label}
        entered={entered}
        known={known}
        barred={field.barred}
        ranged={draft.texts.low !== undefined}
        typing={draft.typing}
        forget={() => {
          draft.drop();
          field.change(undefined);
        }}
        setKnown={(k) => (entered ? field.change({ ...entered, known: k }) : setKnown(k))}
        setNote={(note) => entered && field.change(noted(entered, note))}
        setRanged={draft.setRanged}
      />
    </FieldFrame>
  );
}

function noted({ note: _was, ...rest }: Entered, note: string): Entered {
  return note.trim() === '' ? rest : { ...rest, note };
}

function assumedOf(fallback: SchemaNode['meta']['default'], kind: NonNullable<SchemaNode['meta']['kind']>) {
  if (typeof fallback === 'number') return <Quantity value={fallback} kind={kind} />;
  return typeof fallback === 'object' ? <QuantityRange range={fallback as Range} kind={kind} /> : undefined;
}
