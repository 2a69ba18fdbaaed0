import type { ExpectedReading } from '@kneewall/engine';
import { nodeAt } from '@kneewall/project';
import { FormNode } from '../../form/FormNode.tsx';
import { Button } from '../../look/Button.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity, QuantityRange } from '../../quantity/Quantity.tsx';
import { usePlanner, useServices, useSession } from '../../services.ts';
import { visitEdit } from './readings/readingEdits.ts';
import { VisitSheet } from './readings/VisitSheet.tsx';
import './Lists.css';
import './readings/Visits.css';

/** What a number should be when the plan is right, how to take it, and the readings taken so far. */
export function ReadScreen() {
  const plan = usePlanner((p) => p.plan);
  const expected = (plan?.readings ?? []).filter((r) => r.trade !== 'commissioning');
  const visits = Object.values(plan?.trades.commissioning?.visits ?? {}).toReversed();
  const taken = nodeAt(['readings'])?.node;
  return (
    <>
      <header className="screen-head">
        <h1>Readings</h1>
        <p className="lead">
          Enter the state once, then one reading after the other: how it stands, what fits, what to read next.
        </p>
        <NewVisit />
      </header>
      {plan && visits.map((v) => <VisitSheet key={v.id} visit={v} plan={plan} />)}
      {expected.length > 0 && <h2>What the plan expects in its own state</h2>}
      {expected.length === 0 && <p>Nothing can be expected yet: a unit and ducts come first.</p>}
      {expected.length > 0 && (
        <ul className="readings">
          {expected.map((r) => (
            <li key={r.id}>
              <Expected reading={r} />
            </li>
          ))}
        </ul>
      )}
      {taken && (
        <Sheet title="Readings taken">
          <FormNode node={taken} path={['readings']} depth={0} />
        </Sheet>
      )}
    </>
  );
}

/** Begins a visit with today's day; its state is then entered once for all its readings. */
function NewVisit() {
  const { session } = useServices();
  const visits = useSession((s) => s.project.visits) ?? {};
  const barred = useSession((s) => s.barred !== undefined);
  const today = () => new Date().toISOString().slice(0, 10);
  return (
    <div className="buttons">
      <Button look="strong" disabled={barred} onClick={() => session.change([visitEdit(visits, today())])}>
        Begin a visit
      </Button>
    </div>
  );
}

function Expected({ reading: { what, how, kind, expected, good, caution } }: { reading: ExpectedReading }) {
  return (
    <article className="sheet task">
      {caution && <p className="caution">{caution}</p>}
      <h2>{what}</h2>
      <p className="finding-number">
        <Quantity value={expected} kind={kind} />
      </p>
      <p>
        Good: <QuantityRange range={{ low: good.min, likely: expected, high: good.max }} kind={kind} />
      </p>
      <p className="field-help">{how}</p>
    </article>
  );
}
