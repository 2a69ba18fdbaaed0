import { knownTitle } from '@kneewall/engine';
import { type Entered, type Known, knownWords } from '@kneewall/project';
import { Button } from '../look/Button.tsx';

type Props = {
  readonly id: string;
  readonly label: string;
  readonly entered: Entered | undefined;
  readonly known: Known;
  readonly barred: boolean;
  readonly ranged: boolean;
  /** The box holds something that is not in the document yet. */
  readonly typing: boolean;
  /** Takes the value out again. */
  readonly forget: () => void;
  readonly setKnown: (known: Known) => void;
  readonly setNote: (note: string) => void;
  readonly setRanged: (ranged: boolean) => void;
};

/** How a value is known, and what else may be said of it: a range, a note. */
export function QuantityMore({
  id,
  label,
  entered,
  known,
  barred,
  ranged,
  typing,
  forget,
  setKnown,
  setNote,
  setRanged,
}: Props) {
  return (
    <div className="quantity-more">
      {(entered || typing) && (
        <label className="quantity-known">
          <span className="unseen">{label}, how it is known</span>
          <select
            className="box small"
            disabled={barred}
            value={entered?.known ?? known}
            onChange={(e) => setKnown(e.target.value as Known)}
          >
            {knownWords.map((word) => (
              <option key={word} value={word}>
                {knownTitle[word]}
              </option>
            ))}
          </select>
        </label>
      )}
      {entered && (
        <Button look="quiet" disabled={barred} onClick={forget}>
          Don’t know<span className="unseen">: {label}</span>
        </Button>
      )}
      <details className="quantity-extra">
        <summary>
          {entered?.note ? 'Note' : 'More'}
          <span className="unseen"> about {label}</span>
        </summary>
        <Button look="quiet" disabled={barred} onClick={() => setRanged(!ranged)}>
          {ranged ? 'One number instead of a range' : 'Give low, likely and high'}
        </Button>
        <label htmlFor={`${id}-note`} className="quantity-note-label">
          Note
        </label>
        <textarea
          key={entered?.note ?? ''}
          id={`${id}-note`}
          className="box"
          rows={2}
          disabled={barred || !entered}
          maxLength={2000}
          defaultValue={entered?.note ?? ''}
          onBlur={(e) => e.target.value !== (entered?.note ?? '') && setNote(e.target.value)}
        />
        {entered?.as && <p className="field-help">You wrote: {entered.as}</p>}
      </details>
    </div>
  );
}
