import type { Spread } from '@kneewall/engine';
import { pathLabel, type QuantityKind } from '@kneewall/project';
import { useSession } from '../services.ts';
import { Quantity } from './Quantity.tsx';

/** What makes the range of a result as wide as it is, the largest first. */
export function Drivers({ spread, kind, most = 3 }: { spread: Spread; kind: QuantityKind; most?: number }) {
  const project = useSession((s) => s.project);
  const first = spread.drivers.slice(0, most);
  if (first.length === 0) return null;
  return (
    <p className="field-help">
      {most === 1 ? 'Largest unknown: ' : 'What moves it most: '}
      {first.map((d, i) => (
        <span key={d.path}>
          {i > 0 && '; '}
          {pathLabel(d.path, project)}, worth up to{' '}
          <Quantity value={Math.max(Math.abs(d.atLow), Math.abs(d.atHigh))} kind={kind} significant={2} />
        </span>
      ))}
    </p>
  );
}
