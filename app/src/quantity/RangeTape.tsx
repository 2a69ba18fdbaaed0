import type { QuantityKind, Range } from '@kneewall/project';
import { Quantity } from './Quantity.tsx';
import './RangeTape.css';

/** Low, likely and high on a piece of tape: where the likely value stands in its range. */
export function RangeTape({ range, kind }: { range: Range; kind: QuantityKind }) {
  const span = range.high - range.low;
  const at = span > 0 ? 6 + (88 * (range.likely - range.low)) / span : 50;
  return (
    <figure className="range-tape">
      <svg viewBox="0 0 100 12" preserveAspectRatio="none" aria-hidden="true" focusable="false">
        <rect className="strip" x="0" y="0" width="100" height="12" />
        {Array.from({ length: 24 }, (_, i) => 2 + i * 4).map((x, i) => (
          <line key={x} className="tick" x1={x} x2={x} y1="0" y2={i % 4 === 0 ? 6 : 3.4} />
        ))}
        <rect className="likely" x={at - 0.7} y="0" width="1.4" height="12" />
      </svg>
      <dl>
        <div>
          <dt>low</dt>
          <dd>
            <Quantity value={range.low} kind={kind} />
          </dd>
        </div>
        <div className="mid">
          <dt>likely</dt>
          <dd>
            <Quantity value={range.likely} kind={kind} />
          </dd>
        </div>
        <div>
          <dt>high</dt>
          <dd>
            <Quantity value={range.high} kind={kind} />
          </dd>
        </div>
      </dl>
    </figure>
  );
}
