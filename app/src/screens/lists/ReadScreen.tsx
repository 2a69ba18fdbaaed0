import type { ExpectedReading } from '@kneewall/engine';
import { nodeAt } from '@kneewall/project';
import { FormNode } from '../../form/FormNode.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity, QuantityRange } from '../../quantity/Quantity.tsx';
import { usePlanner } from '../../services.ts';
import './Lists.css';

/** What a number should be when the plan is right, how to take it, and the readings taken so far. */
export function ReadScreen() {
  const expected = usePlanner((p) => p.plan?.readings) ?? [];
  const taken = nodeAt(['readings'])?.node;
  return (
    <>
      <header className="screen-head">
        <h1>Readings</h1>
        <p className="lead">What each number should be under the conditions of the plan, and how to take it.</p>
      </header>
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
