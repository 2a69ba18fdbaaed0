import type { TradeResults } from '@kneewall/engine';
import { StatusMark } from '../../findings/StatusMark.tsx';
import { Button } from '../../look/Button.tsx';
import { Quantity, QuantityRange } from '../../quantity/Quantity.tsx';
import { useServices, useSession } from '../../services.ts';
import { OutcomeOr } from './OutcomeOr.tsx';

type Candidate = TradeResults['equipment']['candidates'][string];

/** One unit against this house. */
export function CandidateCard({ unit, all }: { unit: Candidate; all: readonly string[] }) {
  return (
    <article className={`sheet candidate ${unit.chosen ? 'chosen' : ''}`}>
      <h2>{unit.name}</h2>
      <OutcomeOr outcome={unit.heatingSpare} what="The cold night">
        {(spare) => (
          <p className="candidate-verdict">
            <StatusMark status={spare.low >= 0 ? 'ok' : spare.likely >= 0 ? 'tight' : 'fails'} />
            <span>
              {spare.likely >= 0 ? 'Holds the cold night with ' : 'Short on the cold night by '}
              <Quantity value={Math.abs(spare.likely)} kind="power" />
              {spare.likely >= 0 && ' to spare'}.
            </span>
          </p>
        )}
      </OutcomeOr>
      <dl className="candidate-facts">
        <Fact term="Gives then">
          {unit.heatingCapacity.ok && <QuantityRange range={unit.heatingCapacity.value} kind="power" />}
        </Fact>
        <Fact term="Holds alone down to">
          {unit.balancePoint.ok && <Quantity value={unit.balancePoint.value} kind="temperature" />}
        </Fact>
        <Fact term="Stops and starts">
          {unit.cyclingHours.ok && unit.heatingHours.ok && unit.heatingHours.value > 0 && (
            <>
              <Quantity value={unit.cyclingHours.value / unit.heatingHours.value} kind="fraction" /> of the heating
              hours
            </>
          )}
        </Fact>
        <Fact term="Heat for each part of power then">
          {unit.designCop.ok && <Quantity value={unit.designCop.value} kind="number" significant={2} />}
        </Fact>
        <Fact term="Cooling to spare">
          {unit.coolingSpare.ok && <QuantityRange range={unit.coolingSpare.value} kind="power" />}
        </Fact>
        <Fact term="Draws at most">
          {unit.powerMost.ok && <Quantity value={unit.powerMost.value.high} kind="electric-power" />}
        </Fact>
      </dl>
      <Choose unit={unit} all={all} />
    </article>
  );
}

function Fact({ term, children }: { term: string; children: React.ReactNode }) {
  return (
    <div>
      <dt>{term}</dt>
      <dd>{children || 'unknown'}</dd>
    </div>
  );
}

/** The plan is made for one unit: choosing it lets go of the others, in one act. */
function Choose({ unit, all }: { unit: Candidate; all: readonly string[] }) {
  const { session } = useServices();
  const barred = useSession((s) => s.barred !== undefined);
  if (unit.chosen) return <p className="candidate-chosen">The plan is made for this one.</p>;
  const choose = () =>
    session.change(all.map((id) => ({ path: ['candidates', id, 'chosen'], after: id === unit.id ? true : undefined })));
  return (
    <Button disabled={barred} onClick={choose}>
      Plan for this one
    </Button>
  );
}
