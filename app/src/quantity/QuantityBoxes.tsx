import type { FieldMeta, QuantityKind } from '@kneewall/project';
import { useUnits } from '../services.ts';
import { boxUnit } from './understand.ts';
import type { QuantityDraft } from './useQuantityDraft.ts';

type Props = {
  readonly id: string;
  readonly meta: FieldMeta;
  readonly kind: QuantityKind;
  readonly draft: QuantityDraft;
  readonly barred: boolean;
};

/** One box, or three for low, likely and high, with the unit that a bare number means printed at it. */
export function QuantityBoxes({ id, meta, kind, draft, barred }: Props) {
  const unit = boxUnit(kind, useUnits());
  const { texts, read, typing } = draft;
  const ranged = texts.low !== undefined;
  const keys = ranged ? (['low', 'likely', 'high'] as const) : (['likely'] as const);
  const long = keys.some((key) => (texts[key]?.length ?? 0) > 7);
  const wrong = typing && (read.state === 'refused' || read.state === 'ambiguous') ? read.at : undefined;
  return (
    <div
      className={`quantity-boxes ${ranged ? 'ranged' : ''} ${long ? 'long' : ''} ${unit.length > 6 ? 'wide-unit' : ''}`}
    >
      {keys.map((key) => (
        <span key={key} className="quantity-box">
          {ranged && <span className="quantity-end">{`${key} ${unit}`}</span>}
          <input
            id={key === 'likely' ? id : `${id}-${key}`}
            className="box"
            type="text"
            autoComplete="off"
            spellCheck={false}
            disabled={barred}
            aria-label={ranged ? `${meta.label}, ${key}` : undefined}
            aria-invalid={wrong === key}
            aria-describedby={`${id}-echo${meta.help ? ` ${id}-help` : ''}`}
            value={texts[key] ?? ''}
            onChange={(e) => draft.type(key, e.target.value)}
            onBlur={draft.leave}
            onKeyDown={(e) => {
              if (e.key === 'Enter') draft.leave();
              if (e.key === 'Escape') draft.drop();
            }}
          />
          {!ranged && (
            <span className="quantity-unit" aria-hidden="true">
              {unit}
            </span>
          )}
        </span>
      ))}
    </div>
  );
}
