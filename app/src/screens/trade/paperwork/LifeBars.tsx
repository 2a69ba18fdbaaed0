import { inHundreds, type LifePart, type UnitLife } from '@kneewall/engine';
import { ChartKey } from '../../../look/ChartKey.tsx';
import { Quantity } from '../../../quantity/Quantity.tsx';
import './LifeBars.css';

/** What a bar is made of, in the order it is drawn. */
const groups: readonly { readonly id: string; readonly title: string; readonly parts: readonly LifePart[] }[] = [
  { id: 'buy', title: 'To buy', parts: ['purchase', 'incentive'] },
  { id: 'energy', title: 'Fuel and electricity', parts: ['fuel', 'electricity', 'backup', 'otherHeat'] },
  { id: 'wear', title: 'Wear and upkeep', parts: ['wear', 'upkeep'] },
];

/** Each unit's likely cost as a bar of its parts, with a line from low to high; the numbers stand in the table beside it. */
export function LifeBars({ units }: { units: readonly UnitLife[] }) {
  const most = Math.max(...units.map((u) => u.total.high), 1);
  const wide = (money: number): number => (100 * money) / most;
  return (
    <figure className="life-bars">
      <ChartKey
        hidden
        box={[10, 10]}
        entries={groups.map((g) => ({
          key: g.id,
          mark: <rect className={`life-${g.id}`} width="10" height="10" />,
          said: g.title,
        }))}
      />
      {units.map((u) => (
        <div key={u.id} className="life-bar">
          <p>
            {u.name}
            {u.chosen && <strong> (chosen)</strong>}: <Quantity value={inHundreds(u.total.likely)} kind="money" />
          </p>
          <svg viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true" focusable="false">
            <line x1={wide(u.total.low)} x2={wide(u.total.high)} y1="1" y2="1" />
            <Bar unit={u} wide={wide} />
          </svg>
        </div>
      ))}
    </figure>
  );
}

function Bar({ unit, wide }: { unit: UnitLife; wide: (money: number) => number }) {
  let at = 0;
  return groups.map((g) => {
    const money = Math.max(
      0,
      g.parts.reduce((a, p) => a + unit.parts[p], 0),
    );
    const from = at;
    at += money;
    return <rect key={g.id} className={`life-${g.id}`} x={wide(from)} y="2.5" width={wide(money)} height="5" />;
  });
}
