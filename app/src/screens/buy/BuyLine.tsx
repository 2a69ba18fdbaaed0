import { holdPointTitle, type ListLine, piecesWords, shopTitle, sinceTitle } from '@kneewall/engine';
import type { Range } from '@kneewall/project';
import { Button } from '../../look/Button.tsx';
import { Quantity, QuantityRange } from '../../quantity/Quantity.tsx';
import { useServices, useSession, useUnits } from '../../services.ts';
import { allOf, restChanges, type Tick, tickChanges, tickOf, ticks } from './tick.ts';

/** One thing: how much to buy, what of that is needed, what it costs, and how it stands; what it is for on demand. */
export function BuyLine({ line, way }: { line: ListLine; way: 'when' | 'shop' | 'trade' }) {
  const units = useUnits();
  const many = line.from.length > 1;
  return (
    <li className={`buy-line ${line.openPieces === 0 && line.open === 0 ? 'buy-done' : ''}`}>
      <div className="buy-what">
        <h3>{line.what}</h3>
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
        {many && (
          <details className="fold">
            <summary>
              <span className="fold-title">What it is for</span>
            </summary>
            <ul className="buy-sources">
              {line.from.map((f) => (
                <li key={f.id}>
                  <Quantity value={f.amount} kind={line.kind} />: {f.what}
                </li>
              ))}
            </ul>
          </details>
        )}
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
  const { kind, need, waste, atHand, ordered, left } = line;
  const plain = kind === 'count' && waste === 0 && left === 0 && atHand === 0 && ordered === 0;
  if (plain) return null;
  return (
    <>
      Needed <Quantity value={need} kind={kind} />
      {waste > 0 && (
        <>
          , for waste <Quantity value={waste} kind={kind} />
        </>
      )}
      {atHand > 0 && (
        <>
          , at hand <Quantity value={atHand} kind={kind} />
        </>
      )}
      {ordered > 0 && (
        <>
          , ordered <Quantity value={ordered} kind={kind} />
        </>
      )}
      {left > 1e-6 && (
        <>
          , left over <Quantity value={left} kind={kind} />
        </>
      )}
      .
    </>
  );
}

export function Cost({ cost }: { cost: Range }) {
  return cost.low < cost.high ? (
    <QuantityRange range={cost} kind="money" />
  ) : (
    <Quantity value={cost.likely} kind="money" />
  );
}
