import type { TradeResults } from '@kneewall/engine';
import type { ReactNode } from 'react';
import { Quantity } from '../../../quantity/Quantity.tsx';
import { letterOf, patternId } from './ReachPatterns.tsx';

/** What the letters, numbers and marks of a map mean, in words. */
export function ReachKey({
  id,
  stock,
  reached,
  names,
  snow,
  unit,
}: {
  id: string;
  stock: TradeResults['lineset']['stock'];
  reached: readonly number[];
  names: readonly string[];
  snow: number;
  unit: boolean;
}) {
  return (
    <ul className="reach-key">
      {reached.map((k) => (
        <Meaning
          key={k}
          mark={<rect width="22" height="22" fill={`url(#${patternId(id, k)})`} className="reach-patch" />}
        >
          <strong>{letterOf(k)}</strong>: the <Quantity value={stock[k]?.length ?? 0} kind="length" /> set is long
          enough
        </Meaning>
      ))}
      {unit && (
        <Meaning mark={<rect x="2" y="4" width="18" height="14" className="reach-unit" />}>
          the unit where you mean it, its corner a dot
        </Meaning>
      )}
      {unit && <Meaning mark={<path d="M2 4V18H20" className="reach-way" />}>the line to it</Meaning>}
      <Meaning mark={<path d="M0 11H22" className="reach-snow" />}>
        its base above this line, for the snow: <Quantity value={snow} kind="length" />
      </Meaning>
      <Meaning mark={<circle cx="11" cy="11" r="6" className="reach-out" />}>the line comes out here</Meaning>
      {names.map((name, i) => (
        <li key={name}>
          <span className="reach-number">{i + 1}</span>
          <span>{name}</span>
        </li>
      ))}
      <Meaning mark={<rect width="22" height="22" className="reach-wall reach-patch" />}>
        left plain: no place. Too far, too high, in the snow, too near something, nowhere to stand, or dripping on a
        walk
      </Meaning>
    </ul>
  );
}

function Meaning({ mark, children }: { mark: ReactNode; children: ReactNode }) {
  return (
    <li>
      <svg viewBox="0 0 22 22" aria-hidden="true" focusable="false">
        {mark}
      </svg>
      <span>{children}</span>
    </li>
  );
}
