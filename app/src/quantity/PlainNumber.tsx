import { plainNumber } from '@kneewall/engine';

/** A number of a working, in the unit it was worked out in. */
export function PlainNumber({ value }: { value: number }) {
  return <span className="quantity">{plainNumber(value)}</span>;
}
