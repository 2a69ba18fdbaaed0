import { broughtWords, clock, dayName } from '@kneewall/documents';
import { comesWith, type MaterialsResult, namesOnList, type Plan, worstFirst } from '@kneewall/engine';
import { FindingLine } from '../../findings/FindingLine.tsx';
import { Sheet } from '../../look/Sheet.tsx';

type Delivery = MaterialsResult['own']['deliveries'][number];

const dayOf = (day: number): string => new Date(day * 864e5).toISOString().slice(0, 10);
const today = (): number => Math.floor((Date.now() - new Date().getTimezoneOffset() * 60_000) / 864e5);

/** What comes when and by which day it has to be ordered, what stands against that order; nothing where none is entered. */
export function DeliveriesSheet({ plan }: { plan: Plan }) {
  const materials = plan.trades.materials;
  const deliveries = (materials?.own.deliveries ?? []).toSorted((a, b) => orderDay(a) - orderDay(b));
  if (!materials || deliveries.length === 0) return null;
  const inTurn = deliveries.toSorted((a, b) => arrivalDay(a) - arrivalDay(b));
  const list = materials.list.ok ? materials.list.value : undefined;
  const against = new Set(list?.beforeOrder.map((f) => f.id));
  const before = plan.findings.filter((f) => against.has(f.id) && f.status !== 'tight').toSorted(worstFirst);
  return (
    <Sheet title="Deliveries and the order">
      {deliveries.map((d) => (
        <article key={d.id} className="buy-delivery">
          <h3>{d.name}</h3>
          <p>
            <Days delivery={d} /> Brings {broughtWords(d)}; still to order for it:{' '}
            {list?.lines.filter((l) => l.open > 0 && comesWith(namesOnList(l), l.shop, inTurn).includes(d)).length ?? 0}
            .
          </p>
          <AboutIt plan={plan} id={d.id} />
        </article>
      ))}
      <Lines findings={short(plan)} />
      {before.length > 0 && (
        <details className="fold">
          <summary>
            <span className="fold-title">What must be right before an order ({before.length})</span>
          </summary>
          <ul>
            {before.map((f) => (
              <li key={f.id}>
                <FindingLine finding={f} />
              </li>
            ))}
          </ul>
        </details>
      )}
    </Sheet>
  );
}

/** What stands against a delivery in plain sight, what holds folded. */
function AboutIt({ plan, id }: { plan: Plan; id: string }) {
  const own = plan.findings.filter(
    (f) => (f.trade === 'materials' || f.trade === 'schedule') && f.id.endsWith(`:${id}`),
  );
  const holds = own.filter((f) => f.status === 'ok');
  return (
    <>
      <Lines findings={own.filter((f) => f.status !== 'ok')} />
      {holds.length > 0 && (
        <details className="fold">
          <summary>
            <span className="fold-title">
              {holds.length} {holds.length === 1 ? 'holds' : 'hold'}
            </span>
          </summary>
          <Lines findings={holds} />
        </details>
      )}
    </>
  );
}

const Lines = ({ findings }: { findings: Plan['findings'] }) => (
  <ul>
    {findings.map((f) => (
      <li key={f.id}>
        <FindingLine finding={f} trade={false} />
      </li>
    ))}
  </ul>
);

const orderDay = ({ orderBy, arrives }: Delivery): number =>
  orderBy.ok ? orderBy.value : arrives.ok ? arrives.value : Number.POSITIVE_INFINITY;

const arrivalDay = ({ arrives }: Delivery): number => (arrives.ok ? arrives.value : Number.MAX_VALUE);

const short = (plan: Plan) => plan.findings.filter((f) => f.id.startsWith('schedule/short:'));

function Days({ delivery: { arrives, orderBy, at } }: { delivery: Delivery }) {
  return (
    <>
      {orderBy.ok ? (
        <>
          Order by <strong>{dayName(dayOf(orderBy.value))}</strong>
          {orderBy.value < today() && <strong className="field-problem"> (past)</strong>}.{' '}
        </>
      ) : (
        'No day to order by is entered. '
      )}
      {arrives.ok
        ? `Arrives on ${dayName(dayOf(arrives.value))}; the plan counts on it from ${clock(at / 60)}.`
        : 'No day of arrival is entered: nothing of it counts as come.'}
    </>
  );
}
