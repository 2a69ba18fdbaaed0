import {
  holdPointTitle,
  holdPointWords,
  type ListLine,
  type ShoppingList,
  shopTitle,
  tradeTitle,
} from '@kneewall/engine';
import { useState } from 'react';
import { Button } from '../../look/Button.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Switch } from '../../look/Switch.tsx';
import { useServices, useSession } from '../../services.ts';
import { BuyLine } from './BuyLine.tsx';
import { orderChanges } from './tick.ts';

const ways = { when: 'When', shop: 'Shop', trade: 'Trade' } as const;
type Way = keyof typeof ways;
type Group = { readonly key: string; readonly title: string; readonly lines: readonly ListLine[] };

/** Every line, grouped by when it must be there, where it is bought, or which trade asks for it first. */
export function BuyList({ list }: { list: ShoppingList }) {
  const [way, choose] = useState<Way>('when');
  return (
    <>
      <div className="buy-groups">
        <h2>The list, by</h2>
        <Switch label="Grouped by" value={way} options={ways} choose={choose} />
      </div>
      {groupsOf(list.lines, way).map((g) => (
        <Sheet key={`${way} ${g.key}`} title={g.title}>
          <ul className="buy-lines">
            {g.lines.map((l) => (
              <BuyLine key={l.id} line={l} way={way} />
            ))}
          </ul>
          {way === 'shop' && <OrderAll lines={g.lines} />}
        </Sheet>
      ))}
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

function groupsOf(lines: readonly ListLine[], way: Way): Group[] {
  if (way === 'when')
    return holdPointWords
      .map((by) => ({
        key: by,
        title: `Before “${holdPointTitle[by].title}”`,
        lines: lines.filter((l) => l.by === by),
      }))
      .filter((g) => g.lines.length > 0);
  const keyOf = (l: ListLine): string => (way === 'shop' ? l.shop : (l.from[0]?.trade ?? 'materials'));
  const titles: Readonly<Record<string, string>> =
    way === 'shop' ? shopTitle : { ...tradeTitle, materials: 'Joining and fixing' };
  return [...new Set(lines.map(keyOf))].map((key) => ({
    key,
    title: titles[key] ?? key,
    lines: lines.filter((l) => keyOf(l) === key),
  }));
}
