import { amountWords, holdPointTitle, type ListLine, piecesWords, shopTitle, sinceTitle } from '@kneewall/engine';
import type { Range } from '@kneewall/project';
import { Button } from '../../look/Button.tsx';
import { Quantity, QuantityRange } from '../../quantity/Quantity.tsx';
import { useServices, useSession, useUnits } from '../../services.ts';
import { PriceBox } from './PriceBox.tsx';
import { allOf, restChanges, type Tick, tickChanges, tickOf, ticks } from './tick.ts';

/** One thing: how much to buy, what of that is needed, what it costs, and how it stands; what it is for on demand. */
export function BuyLine({ line, way }: { line: ListLine; way: 'when' | 'shop' | 'trade' }) {
  const units = useUnits();
  const many = line.from.length > 1;
  return (
    <li className={`buy-line ${line.openPieces === 0 && line.open === 0 ? 'buy-done' : ''}`}>
      <div className="buy-what">
        <h4>{line.what}</h4>
        <p className="buy-amount">
          <strong>{piecesWords(line, line.pieces, line.bought, units)}</strong>
          {line.cost && (
            <>
              {', '}
              <Cost cost={line.cost} />
            </>
          )}
          {line.ordered > 0 && <span className="buy-since">{sinceTitle[line.since]}</span>}
        </p>
        <p className="field-help">
          <Facts line={line} /> {way !== 'shop' && `${shopTitle[line.shop]}. `}
          {way !== 'when' && `Before “${holdPointTitle[line.by].title}”.`}
        </p>
        <PriceBox line={line}>
          {many && (
            <ul className="buy-sources">
              {line.from.map((f) => (
                <li key={f.id}>
                  {amountWords(f.amount, line.kind, units)}: {f.what}
                </li>
              ))}
            </ul>
          )}
        </PriceBox>
      </div>
      <TickBox line={line} />
    </li>
  );
}

/** How it stands, to choose; one act, which one undo takes back. */
function TickBox({ line }: { line: ListLine }) {
  const { session } = useServices();
  const barred = useSession((s) => s.barred !== undefined);
  const project = useSession((s) => s.project);
  return (
    <div className="buy-tick">
      <select
        className="box"
        aria-label={`How it stands: ${line.what}`}
        disabled={barred}
        value={tickOf(project, line.id)}
        onChange={(e) => {
          const tick = e.target.value as Tick;
          session.change(tickChanges(session.now().project, allOf(line, tick), tick));
        }}
      >
        {Object.entries(ticks).map(([key, word]) => (
          <option key={key} value={key}>
            {word}
          </option>
        ))}
      </select>
      {line.since === 'more' && (
        <Button
          look="quiet"
          disabled={barred}
          onClick={() => session.change(restChanges(session.now().project, allOf(line, 'ordered')))}
        >
          The rest is ordered too
        </Button>
      )}
    </div>
  );
}

/** Need, waste, what is there, and what is left over: only what there is. */
function Facts({ line }: { line: ListLine }) {
  const units = useUnits();
  const { kind, need, waste, atHand, ordered, left } = line;
  const parts: readonly (readonly [string, number])[] = [
    ['for waste', waste],
    ['at hand', atHand],
    ['ordered', ordered],
    ['left over', left],
  ];
  const there = parts.filter(([, amount]) => amount > 1e-6);
  if (kind === 'count' && there.length === 0) return null;
  const say = (amount: number) => amountWords(amount, kind, units);
  return `Needed ${say(need)}${there.map(([word, amount]) => `, ${word} ${say(amount)}`).join('')}.`;
}

export function Cost({ cost }: { cost: Range }) {
  return cost.low < cost.high ? (
    <QuantityRange range={cost} kind="money" />
  ) : (
    <Quantity value={cost.likely} kind="money" />
  );
}
