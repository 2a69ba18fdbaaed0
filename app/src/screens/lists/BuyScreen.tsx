import { materialsCsv } from '@kneewall/documents';
import { tradeTitle } from '@kneewall/engine';
import type { QuantityKind, Range } from '@kneewall/project';
import { handOver } from '../../files/saveFile.ts';
import { Button } from '../../look/Button.tsx';
import { Scroll } from '../../look/Scroll.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity, QuantityRange } from '../../quantity/Quantity.tsx';
import { usePlanner, useUnits } from '../../services.ts';

/** What must be bought, as far as the trades know. */
export function BuyScreen() {
  const plan = usePlanner((p) => p.plan);
  const lines = plan?.materials ?? [];
  const units = useUnits();
  const priced = (trade: string) => lines.some((l) => l.trade === trade && l.cost);
  const trades = [...new Set(lines.map((l) => l.trade))];
  return (
    <>
      <header className="screen-head">
        <h1>What to buy</h1>
        <p className="lead">
          Amounts as the plan needs them; costs at the prices you entered, before rounding to whole pieces. Look at what
          stands against “Order” before anything is paid for.
        </p>
      </header>
      {lines.length === 0 && <p>Nothing to buy follows from the plan yet.</p>}
      {plan && lines.length > 0 && (
        <p>
          <Button onClick={() => handOver('what-to-buy.csv', materialsCsv(plan, units), 'text/csv')}>
            Save as a table (CSV)
          </Button>
        </p>
      )}
      {trades.map((trade) => (
        <Sheet key={trade} title={tradeTitle[trade]}>
          <Scroll label={`What to buy: ${tradeTitle[trade]}`}>
            <table className="table">
              <thead>
                <tr>
                  <th scope="col">What</th>
                  <th scope="col">How much</th>
                  <th scope="col">Sold by</th>
                  {priced(trade) && <th scope="col">Costs</th>}
                </tr>
              </thead>
              <tbody>
                {lines
                  .filter((l) => l.trade === trade)
                  .map((l) => (
                    <tr key={l.id}>
                      <th scope="row">{l.what}</th>
                      <td>
                        <Quantity value={l.amount} kind={l.kind} />
                      </td>
                      <td>{l.soldBy !== undefined && <Piece of={l.soldBy} kind={l.kind} />}</td>
                      {priced(trade) && <td>{l.cost && <Cost cost={l.cost} />}</td>}
                    </tr>
                  ))}
              </tbody>
            </table>
          </Scroll>
        </Sheet>
      ))}
    </>
  );
}

/** What it is sold by: single things by the piece. */
const Piece = ({ of, kind }: { of: number; kind: QuantityKind }) =>
  kind === 'count' && of === 1 ? 'the piece' : <Quantity value={of} kind={kind} />;

/** At the prices entered, before rounding to whole pieces. */
function Cost({ cost }: { cost: Range }) {
  return cost.low < cost.high ? (
    <QuantityRange range={cost} kind="money" />
  ) : (
    <Quantity value={cost.likely} kind="money" />
  );
}
