import type { Entered, Known, Range, SchemaNode } from '@kneewall/project';
import { useState } from 'react';
import { FieldFrame } from '../form/FieldFrame.tsx';
import { fieldId, useField } from '../form/useField.ts';
import { useUnits } from '../services.ts';
import { Quantity, QuantityRange } from './Quantity.tsx';
import { QuantityEcho } from './QuantityEcho.tsx';
import { QuantityMore } from './QuantityMore.tsx';
import { boxTexts, boxUnit, enteredFrom, type Texts, understand } from './understand.ts';
import './QuantityField.css';

/** One entered quantity: typed in the person's words, echoed in both systems, with how it is known. */
export function QuantityField({ node, path }: { node: SchemaNode; path: readonly string[] }) {
  const { meta } = node;
  const kind = meta.kind ?? 'number';
  const units = useUnits();
  const field = useField(path);
  const entered = field.value as Entered | undefined;
  const stands = boxTexts(entered, kind, units);
  const [draft, setDraft] = useState<Texts | undefined>();
  const [known, setKnown] = useState<Known>(meta.usually ?? 'estimated');
  const texts = draft ?? stands;
  const read = understand(texts, kind, units);
  const id = fieldId(path);

  const commit = (next: Texts) => {
    const now = understand(next, kind, units);
    if (now.state === 'empty' && field.change(undefined)) setDraft(undefined);
    if (now.state === 'understood' && field.change(enteredFrom(now.value, now.as, entered?.known ?? known, entered)))
      setDraft(undefined);
  };
  const leave = () => {
    if (draft) commit(draft);
  };
  const rewrite = (key: keyof Texts, text: string) => {
    const next = { ...texts, [key]: text };
    setDraft(next);
    commit(next);
  };
  const keys = texts.low === undefined ? (['likely'] as const) : (['low', 'likely', 'high'] as const);
  return (
    <FieldFrame
      meta={meta}
      path={path}
      saving={field.saving}
      problems={field.problems}
      empty={!entered}
      assumed={assumedOf(meta.default, kind)}
    >
      <div className={`quantity-boxes ${keys.length > 1 ? 'ranged' : ''}`}>
        {keys.map((key) => (
          <span key={key} className="quantity-box">
            {keys.length > 1 && <span className="quantity-end">{`${key} ${boxUnit(kind, units)}`}</span>}
            <input
              id={key === 'likely' ? id : `${id}-${key}`}
              className="box"
              type="text"
              autoComplete="off"
              spellCheck={false}
              disabled={field.barred}
              aria-label={keys.length > 1 ? `${meta.label}, ${key}` : undefined}
              aria-invalid={
                draft !== undefined && (read.state === 'refused' || read.state === 'ambiguous') && read.at === key
              }
              aria-describedby={`${id}-echo${meta.help ? ` ${id}-help` : ''}`}
              value={texts[key] ?? ''}
              onChange={(e) => setDraft({ ...texts, [key]: e.target.value })}
              onBlur={leave}
              onKeyDown={(e) => {
                if (e.key === 'Enter') leave();
                if (e.key === 'Escape') setDraft(undefined);
              }}
            />
            {keys.length === 1 && (
              <span className="quantity-unit" aria-hidden="true">
                {boxUnit(kind, units)}
              </span>
            )}
          </span>
        ))}
      </div>
      <QuantityEcho
        id={`${id}-echo`}
        read={read}
        typing={draft !== undefined}
        entered={entered}
        meta={meta}
        choose={rewrite}
      />
      <QuantityMore
        id={id}
        label={meta.label}
        entered={entered}
        known={known}
        barred={field.barred}
        ranged={texts.low !== undefined}
        typing={draft !== undefined}
        forget={() => {
          setDraft(undefined);
          field.change(undefined);
        }}
        setKnown={(k) => (entered ? field.change({ ...entered, known: k }) : setKnown(k))}
        setNote={(note) => entered && field.change(noted(entered, note))}
        setRanged={(ranged) =>
          setDraft(ranged ? { low: texts.likely, likely: texts.likely, high: texts.likely } : { likely: texts.likely })
        }
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
