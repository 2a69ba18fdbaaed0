import { type ShoppingList, scopeTitle } from '@kneewall/engine';
import { Scroll } from '../../look/Scroll.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Cost } from './BuyLine.tsx';

type Costs = ShoppingList['cost'];

const things = (n: number): string => (n === 1 ? '1 thing' : `${n} things`);

/** Money for all of it by part of the job, and how many things have no price yet. */
export function CostSheet({ cost }: { cost: Costs }) {
  const scopes = (Object.keys(cost.scopes) as (keyof Costs['scopes'])[]).filter(
    (s) => cost.scopes[s].priced + cost.scopes[s].unpriced > 0,
  );
  return (
    <Sheet title="What it costs">
      <p className="lead">
        {cost.priced === 0 ? (
          <>No price is entered yet: {things(cost.unpriced)} without one.</>
        ) : (
          <>
            <Cost cost={cost} /> for {things(cost.priced)}
            {cost.unpriced > 0 ? `; ${things(cost.unpriced)} without a price.` : ', which is all of it.'}
          </>
        )}
      </p>
      {cost.priced > 0 && (
        <Scroll label="What it costs, by part of the job">
          <table className="table">
            <thead>
              <tr>
                <th scope="col">Part of the job</th>
                <th scope="col">Costs</th>
                <th scope="col">Without a price</th>
              </tr>
            </thead>
            <tbody>
              {scopes.map((s) => (
                <tr key={s}>
                  <th scope="row">{scopeTitle[s]}</th>
                  <td>{cost.scopes[s].priced > 0 ? <Cost cost={cost.scopes[s]} /> : 'not known'}</td>
                  <td>{cost.scopes[s].unpriced > 0 ? things(cost.scopes[s].unpriced) : 'none'}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </Scroll>
      )}
      <p className="field-help">
        At the prices you entered, in whole packs. Labour, removal, permit and freight are not in it.
        {cost.open.priced < cost.priced && (
          <>
            {' '}
            Not ordered yet: <Cost cost={cost.open} />.
          </>
        )}
      </p>
    </Sheet>
  );
}
