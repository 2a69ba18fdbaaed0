import type { ListLine, ShoppingList } from '@kneewall/engine';
import { useState } from 'react';
import { Button } from '../../look/Button.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Switch } from '../../look/Switch.tsx';
import { useServices, useSession } from '../../services.ts';
import { BuyLine, Cost } from './BuyLine.tsx';
import { groupSums, groupsOf, linesWith, type Way, ways } from './groups.ts';
import { orderChanges } from './tick.ts';

/**
 * Every line, grouped by when it must be there, where it is bought, or which trade asks for it first: what is due first stands open, the
 * rest is folded with its count and sum. Words typed leave the lines that have them, all open.
 */
export function BuyList({ list }: { list: ShoppingList }) {
  const [way, choose] = useState<Way>('when');
  const [typed, type] = useState('');
  const found = linesWith(list.lines, typed);
  const groups = groupsOf(found, way);
  const due = groups.find((g) => g.lines.some((l) => l.open > 0)) ?? groups[0];
  const searching = typed.trim() !== '';
  return (
    <Sheet title="The list">
      <div className="buy-groups">
        <Switch label="Grouped by" value={way} options={ways} choose={choose} />
        <label className="field buy-find">
          Find in the list
          <input className="box" type="search" value={typed} onChange={(e) => type(e.target.value)} />
        </label>
      </div>
      <p role="status" className="field-help">
        {searching && `${found.length} of ${list.lines.length} things have these words.`}
      </p>
      {groups.map((g) => (
        <details key={`${way} ${g.key} ${searching}`} className="fold buy-fold" open={searching || g === due}>
          <summary>
            <h3 className="fold-title">{g.title}</h3>
            <span className="fold-count">
              <GroupFacts lines={g.lines} />
            </span>
          </summary>
          <ul className="buy-lines">
            {g.lines.map((l) => (
              <BuyLine key={l.id} line={l} way={way} />
            ))}
          </ul>
          {way === 'shop' && <OrderAll lines={g.lines} />}
        </details>
      ))}
    </Sheet>
  );
}

/** How many things, how many of them are still to buy, what they cost and how many have no price. */
function GroupFacts({ lines }: { lines: readonly ListLine[] }) {
  const { things, open, unpriced, cost } = groupSums(lines);
  return (
    <>
      {things} {things === 1 ? 'thing' : 'things'}, {open === 0 ? 'none' : open} still to buy
      {cost && (
        <>
          , <Cost cost={cost} />
        </>
      )}
      {unpriced > 0 && `, ${unpriced} without a price`}
    </>
  );
}

/** Everything of a shop that is still to buy, ordered in one act. */
function OrderAll({ lines }: { lines: readonly ListLine[] }) {
  const { session } = useServices();
  const barred = useSession((s) => s.barred !== undefined);
  const open = lines.filter((l) => l.open > 0 && l.ordered === 0);
  if (open.length === 0) return null;
  return (
    <Button disabled={barred} onClick={() => session.change(orderChanges(session.now().project, open))}>
      All {open.length} still to buy here are ordered
    </Button>
  );
}
