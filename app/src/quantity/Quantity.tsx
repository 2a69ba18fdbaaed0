import { printQuantity, type QuantityKind, type Range, type System } from '@kneewall/project';
import { formatRange } from '@kneewall/project/quantity';
import { useUnits } from '../services.ts';
import './Quantity.css';

type Props = {
  readonly value: number;
  readonly kind: QuantityKind;
  readonly significant?: number;
  /** Another unit than the system's usual one, where people say it so: wind in miles an hour. */
  readonly unit?: Partial<Record<System, string>>;
};

/** A number in the person's units. The only way a screen shows one. */
export function Quantity({ value, kind, significant, unit }: Props) {
  const units = useUnits();
  const own = unit?.[units];
  const options = {
    ...(significant === undefined ? {} : { significant }),
    ...(own === undefined ? {} : { unit: own }),
  };
  return <span className="quantity">{printQuantity(value, kind, units, options)}</span>;
}

/** `low to high`, the unit once. */
export function QuantityRange({ range, kind }: { range: Range; kind: QuantityKind }) {
  const units = useUnits();
  return <span className="quantity">{formatRange(range, kind, units)}</span>;
}
