import { tradeTitle } from '@kneewall/engine';
import type { FieldMeta, Problem } from '@kneewall/project';
import { type ReactNode, useEffect, useRef } from 'react';
import { useRoute } from '../route/route.ts';
import { type FieldSaving, fieldId } from './useField.ts';
import './FieldFrame.css';

type Props = {
  readonly meta: FieldMeta;
  readonly path: readonly string[];
  readonly saving: FieldSaving;
  readonly problems: readonly Problem[];
  /** What stands in while nothing is entered. */
  readonly assumed?: ReactNode;
  readonly empty: boolean;
  readonly children: ReactNode;
};

/** What every field has in common: its label, help, what is assumed or missing, whether it is kept, what was refused. */
export function FieldFrame({ meta, path, saving, problems, assumed, empty, children }: Props) {
  const id = fieldId(path);
  const frame = useRef<HTMLDivElement>(null);
  const wanted = useRoute().field === path.join('.');
  useEffect(() => {
    if (!wanted) return;
    frame.current?.scrollIntoView({ block: 'center' });
    document.getElementById(id)?.focus();
  }, [wanted, id]);
  const needed = empty && meta.neededBy && meta.neededBy.length > 0;
  return (
    <div className={`field ${wanted ? 'wanted' : ''}`} ref={frame}>
      <div className="field-head">
        <label htmlFor={id}>{meta.label}</label>
        <SavingMark saving={saving} />
      </div>
      {meta.help && (
        <p className="field-help" id={`${id}-help`}>
          {meta.help}
        </p>
      )}
      {children}
      {empty && assumed !== undefined && <p className="field-help">Not entered. Assumed: {assumed}</p>}
      {needed && (
        <p className="field-needed">Not known. Needed for {meta.neededBy?.map((t) => tradeTitle[t]).join(', ')}.</p>
      )}
      {problems.map((p) => (
        <p key={p.code} className="field-problem" role="alert">
          {p.mend}
        </p>
      ))}
    </div>
  );
}

function SavingMark({ saving }: { saving: FieldSaving }) {
  if (saving === 'not-saved') return <span className="field-unsaved">not saved</span>;
  return saving === 'saved' ? <span className="field-saved">on this device</span> : null;
}
