import { type DuctFact, type DuctFacts, madeOf, sizeWords } from '@kneewall/documents';
import type { Plan } from '@kneewall/engine';
import { nodeAt } from '@kneewall/project';
import { FindingLine } from '../../../findings/FindingLine.tsx';
import { FormNode } from '../../../form/FormNode.tsx';
import { Quantity } from '../../../quantity/Quantity.tsx';
import { useUnits } from '../../../services.ts';
import { SizeStepper } from './SizeStepper.tsx';

type Props = {
  readonly duct: DuctFact;
  readonly facts: DuctFacts;
  readonly plan: Plan;
  readonly hardest: boolean;
};

/** One section: what flows in it, what limits it, and the stocked sizes beside it. */
export function ChosenDuct({ duct, facts, plan, hardest }: Props) {
  const units = useUnits();
  const against = plan.findings.filter((f) => f.trade === 'air' && f.subject === duct.id && f.status !== 'ok');
  return (
    <section className="duct-chosen" aria-labelledby="duct-chosen-title">
      <h3 id="duct-chosen-title">
        {duct.tag} {duct.name}
      </h3>
      <dl className="duct-facts">
        <Fact term="Size">
          {sizeWords(duct.size, units)}, {madeOf[duct.kind]}
        </Fact>
        <Fact term="Flow">{duct.flow !== undefined && <Quantity value={duct.flow} kind="flow" />}</Fact>
        <Fact term="Speed">{duct.speed !== undefined && <Quantity value={duct.speed} kind="velocity" />}</Fact>
        <Fact term="Pressure lost">{duct.drop !== undefined && <Quantity value={duct.drop} kind="pressure" />}</Fact>
      </dl>
      <SizeStepper duct={duct} />
      <Whole plan={plan} />
      <WayInPlan id={duct.id} />
      <h4>What limits it</h4>
      <WayWords duct={duct} plan={plan} hardest={hardest} />
      <RoomWords duct={duct} facts={facts} plan={plan} />
      {against.length > 0 && (
        <ul className="duct-findings">
          {against.map((f) => (
            <li key={f.id}>
              <FindingLine finding={f} trade={false} />
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

/** The same field as in the form below, at hand where its section is looked at. */
function WayInPlan({ id }: { id: string }) {
  const path = ['routes', 'ducts', 'sections', id, 'points'];
  const node = nodeAt(path)?.node;
  return node ? <FormNode key={id} node={node} path={path} depth={1} /> : null;
}

function Fact({ term, children }: { term: string; children: React.ReactNode }) {
  return (
    <div>
      <dt>{term}</dt>
      <dd>{children || 'unknown'}</dd>
    </div>
  );
}

/** What the whole does with this size; said again after each change. */
function Whole({ plan }: { plan: Plan }) {
  const flows = plan.trades.air?.flows;
  if (!flows?.ok) return <p className="not-known">What flows is not known with these sizes.</p>;
  return (
    <p aria-live="polite">
      With these sizes the blower moves <Quantity value={flows.value.flow} kind="flow" /> against{' '}
      <Quantity value={flows.value.staticPressure} kind="pressure" />.
    </p>
  );
}

function WayWords({ duct, plan, hardest }: { duct: DuctFact; plan: Plan; hardest: boolean }) {
  const flows = plan.trades.air?.flows;
  if (!flows?.ok || duct.drop === undefined) return <p>Unknown until the flows are.</p>;
  if (!hardest)
    return (
      <p>
        It does not lie on the hardest way. A larger size sends more air here and less elsewhere; the whole moves
        little.
      </p>
    );
  return (
    <p>
      It lies on the hardest way and takes <Quantity value={duct.drop / flows.value.staticPressure} kind="fraction" />{' '}
      of the pressure there is: a larger size here moves more air through the whole.
    </p>
  );
}

/** The rooms whose registers hang on this very section. */
function RoomWords({ duct, facts, plan }: { duct: DuctFact; facts: DuctFacts; plan: Plan }) {
  const model = plan.trades.air?.model;
  const rooms = plan.trades.air?.rooms ?? {};
  const fed = new Set(
    model?.ok && duct.side === 'supply'
      ? model.value.terminals.flatMap((t) => (t.section === duct.id ? [t.room] : []))
      : [],
  );
  return [...fed].map((id) => {
    const room = rooms[id];
    if (!room?.wanted.ok || !room.reaches.ok) return null;
    const name = facts.faces.find((f) => f.section === duct.id)?.room ?? id;
    return (
      <p key={id}>
        “{name}” gets <Quantity value={room.reaches.value.likely} kind="flow" /> in all of the{' '}
        <Quantity value={room.wanted.value} kind="flow" /> that its {room.governs} load asks for.
      </p>
    );
  });
}
