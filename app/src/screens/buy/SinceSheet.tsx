import { piecesWords, type ShoppingList, sinceTitle, unusedWords } from '@kneewall/engine';
import { Sheet } from '../../look/Sheet.tsx';
import { useUnits } from '../../services.ts';

/** What has changed since the last order; nothing while nothing was ordered from the list, or all still holds. */
export function SinceSheet({ list }: { list: ShoppingList }) {
  const units = useUnits();
  const moved = list.lines.filter((l) => l.since === 'more' || l.since === 'less');
  const others = list.lines.filter((l) => l.since === 'new');
  if (moved.length + others.length + list.gone.length === 0) return null;
  return (
    <Sheet title="Against what was ordered">
      <ul className="buy-sources">
        {moved.map((l) => (
          <li key={l.id}>
            {l.what}: {sinceTitle[l.since]}
            {l.open > 0 && `, still to order ${piecesWords(l, l.openPieces, l.open, units)}`}.
          </li>
        ))}
        {list.gone.map((g) => (
          <li key={g.path}>{g.name}: no longer needed.</li>
        ))}
      </ul>
      {others.length > 0 && (
        <details className="fold">
          <summary>
            <span className="fold-title">Not on the order, from shops you ordered at ({others.length})</span>
          </summary>
          <ul className="buy-sources">
            {others.map((l) => (
              <li key={l.id}>
                {piecesWords(l, l.openPieces, l.open, units)}: {l.what}
              </li>
            ))}
          </ul>
        </details>
      )}
    </Sheet>
  );
}

/** Prices, stock and orders that could not be used, each with the reason; nothing where all could. */
export function UnusedSheet({ list }: { list: ShoppingList }) {
  if (list.unused.length === 0) return null;
  return (
    <Sheet title="Entered, and not used">
      <ul className="buy-sources">
        {list.unused.map((u) => (
          <li key={`${u.path} ${u.name}`}>
            {u.name}: {unusedWords[u.because]}.
          </li>
        ))}
      </ul>
    </Sheet>
  );
}
