import { type LoadPart, partShares, partTitle } from '@kneewall/engine';
import { Quantity } from '../../quantity/Quantity.tsx';
import './PartsBars.css';

/** The parts of a load as a table with a bar each: the same facts twice. */
export function PartsBars({ parts, title }: { parts: readonly LoadPart[]; title: string }) {
  const shares = partShares(parts);
  if (shares.length === 0) return null;
  const largest = Math.max(...shares.map((p) => p.share), 1e-9);
  return (
    <table className="parts">
      <caption>{title}</caption>
      <tbody>
        {shares.map(({ part, heat, share }) => (
          <tr key={part}>
            <th scope="row">{partTitle[part]}</th>
            <td className="parts-bar">
              <svg viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true" focusable="false">
                <rect width={(100 * share) / largest} height="10" />
              </svg>
            </td>
            <td>
              <Quantity value={share} kind="fraction" significant={2} />
            </td>
            <td>
              <Quantity value={heat} kind="power" />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
