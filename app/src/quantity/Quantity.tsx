import { printQuantity, type QuantityKind, type Range } from '@kneewall/project';
import { formatRange } from '@kneewall/project/quantity';
import { useUnits } from '../services.ts';
import './Quantity.css';

/** A number in the person's units. The only way a screen shows one. */
export function Quantity({ value, kind, significant }: { value: number; kind: QuantityKind; significant?: number }) {
  const units = useUnits();
  return (
    <span className="quantity">
      {printQuantity(value, kind, units, significant === undefined ? {} : { significant })}
    </span>
  );
}

/** `low to high`, the unit once. */
export function QuantityRange({ range, kind }: { range: Range; kind: QuantityKind }) {
  const units = useUnits();
  return <span className="quantity">{formatRange(range, kind, units)}</span>;
}
