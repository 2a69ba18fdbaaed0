import type { TradeResults } from '@kneewall/engine';
import { Quantity } from '../../quantity/Quantity.tsx';
import './PressureLadder.css';

type Rung = Extract<TradeResults['air']['ladder'], { ok: true }>['value'][number];

const sideWord: Readonly<Record<Rung['side'], string>> = { return: 'return', unit: 'unit', supply: 'supply' };

/** What uses up the blower's pressure along the worst path, piece by piece, from the room back to the room. */
export function PressureLadder({ rungs }: { rungs: readonly Rung[] }) {
  const whole = rungs.reduce((n, r) => n + r.drop, 0);
  let used = 0;
  const placed = rungs.map((rung) => {
    const from = used;
    used += rung.drop;
    return { ...rung, from };
  });
  return (
    <table className="ladder">
      <caption>The pressure ladder: what uses up the blower’s pressure on the worst path</caption>
      <tbody>
        {placed.map(({ piece, side, drop, from }) => (
          <tr key={`${side} ${piece}`} className={side}>
            <th scope="row">
              {piece} <span className="ladder-side">{sideWord[side]}</span>
            </th>
            <td className="ladder-bar">
              <svg viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true" focusable="false">
                <rect className="ladder-rail" width="100" height="10" />
                <rect
                  className="ladder-rung"
                  x={whole > 0 ? (100 * from) / whole : 0}
                  width={whole > 0 ? Math.max(0.6, (100 * drop) / whole) : 0}
                  height="10"
                />
              </svg>
            </td>
            <td>
              <Quantity value={drop} kind="pressure" />
            </td>
          </tr>
        ))}
        <tr className="ladder-sum">
          <th scope="row">Together</th>
          <td />
          <td>
            <Quantity value={whole} kind="pressure" />
          </td>
        </tr>
      </tbody>
    </table>
  );
}
