import type { Entered, FieldMeta } from '@kneewall/project';
import { QuantityBoxes } from '../quantity/QuantityBoxes.tsx';
import { QuantityEcho } from '../quantity/QuantityEcho.tsx';
import { useQuantityDraft } from '../quantity/useQuantityDraft.ts';
import '../quantity/QuantityField.css';

type Props = {
  readonly id: string;
  readonly label: string;
  readonly corner: number;
  readonly value: number;
  readonly barred: boolean;
  readonly set: (metres: number) => void;
};

/** One number of a corner, typed like every length; an emptied box springs back. */
export function CoordinateBox({ id, label, corner, value, barred, set }: Props) {
  const meta: FieldMeta = { node: 'quantity', kind: 'length', label };
  const standing: Entered = { value, known: 'measured' };
  const draft = useQuantityDraft('length', standing, 'measured', (after) => {
    if (typeof after?.value === 'number') set(after.value);
    return true;
  });
  return (
    <div>
      <label htmlFor={id}>
        <span className="unseen">Corner {corner}, </span>
        {label}
      </label>
      <QuantityBoxes id={id} meta={meta} kind="length" draft={draft} barred={barred} />
      <QuantityEcho
        id={`${id}-echo`}
        read={draft.read}
        typing={draft.typing}
        entered={undefined}
        meta={meta}
        choose={draft.choose}
      />
    </div>
  );
}
