import type { Entered, FieldMeta } from '@kneewall/project';
import { Button } from '../look/Button.tsx';
import { QuantityRange } from './Quantity.tsx';
import { echoed, type Texts, type Understood } from './understand.ts';

type Props = {
  readonly id: string;
  readonly read: Understood;
  /** The box holds something that is not in the document yet. */
  readonly typing: boolean;
  readonly entered: Entered | undefined;
  readonly meta: FieldMeta;
  readonly choose: (key: keyof Texts, text: string) => void;
};

/** What was understood, at once and in both systems; two buttons where it may mean two things. */
export function QuantityEcho({ id, read, typing, entered, meta, choose }: Props) {
  return (
    <div id={id} className="quantity-echo" aria-live="polite">
      {typing && read.state === 'understood' && <span>{read.echo}</span>}
      {typing && read.state === 'refused' && <span className="field-problem">{read.words}</span>}
      {typing && read.state === 'ambiguous' && (
        <div className="quantity-readings">
          <span>Which do you mean?</span>
          {read.readings.map(({ text, echo }) => (
            <Button key={text} onPointerDown={(e) => e.preventDefault()} onClick={() => choose(read.at, text)}>
              <span>{text}</span>
              {echo !== text && <span className="quantity-reading">{echo}</span>}
            </Button>
          ))}
        </div>
      )}
      {!typing && entered && meta.kind && <Standing entered={entered} kind={meta.kind} />}
      <Implausible
        value={typing ? (read.state === 'understood' ? read.value : undefined) : entered?.value}
        meta={meta}
        kept={!typing}
      />
    </div>
  );
}

function Standing({ entered, kind }: { entered: Entered; kind: NonNullable<FieldMeta['kind']> }) {
  const text = echoed(entered.value, kind);
  // Where both systems say the same, the box has said it already.
  return text.includes('·') ? <span>{text}</span> : null;
}

type Odd = { readonly value: Entered['value'] | undefined; readonly meta: FieldMeta; readonly kept: boolean };

function Implausible({ value, meta, kept }: Odd) {
  const { plausible, kind } = meta;
  if (value === undefined || !plausible || !kind) return null;
  const ends = typeof value === 'number' ? [value] : [value.low, value.high];
  if (ends.every((n) => n >= plausible.min && n <= plausible.max)) return null;
  const usual = { low: plausible.min, likely: plausible.min, high: plausible.max };
  return (
    <span className="quantity-odd">
      {kept && 'Kept. '}Look again: it is usually <QuantityRange range={usual} kind={kind} />.
    </span>
  );
}
