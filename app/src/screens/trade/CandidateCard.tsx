import { type Finding, type TradeResults, worstFirst } from '@kneewall/engine';
import { printQuantity, type Range } from '@kneewall/project';
import { FindingLine } from '../../findings/FindingLine.tsx';
import { StatusMark } from '../../findings/StatusMark.tsx';
import { Button } from '../../look/Button.tsx';
import { Quantity, QuantityRange } from '../../quantity/Quantity.tsx';
import { usePlanner, useServices, useSession, useUnits } from '../../services.ts';
import { CandidateWinter } from './CandidateWinter.tsx';
import { OutcomeOr } from './OutcomeOr.tsx';
import { feelOf } from './winterWays.ts';

type Candidate = TradeResults['equipment']['candidates'][string];

/** One unit against this house. */
export function CandidateCard({ unit, all }: { unit: Candidate; all: readonly string[] }) {
  const price = useSession((s) => s.project.candidates?.[unit.id]?.price);
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
      <Feel unit={unit} />
      {unit.winter.ok && <CandidateWinter name={unit.name} winter={unit.winter.value} />}
      <dl className="candidate-facts">
        <Fact term="Price">{price && <QuantityRange range={asRange(price.value)} kind="money" />}</Fact>
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
      <Risk unit={unit} />
      <Choose unit={unit} all={all} />
    </article>
  );
}

const asRange = (value: number | Range): Range =>
  typeof value === 'number' ? { low: value, likely: value, high: value } : value;

function Feel({ unit }: { unit: Candidate }) {
  const units = useUnits();
  const words = unit.winter.ok ? feelOf(unit.winter.value, (t) => printQuantity(t, 'temperature', units)) : undefined;
  return words === undefined ? null : <p className="candidate-feel">{words}</p>;
}

/** The worst of what stands against it. */
function Risk({ unit }: { unit: Candidate }) {
  const findings = usePlanner((p) => p.plan?.findings);
  const own = (findings ?? []).filter((f: Finding) => f.subject === unit.id).toSorted(worstFirst);
  const [worst] = own.filter((f) => f.status !== 'ok');
  if (own.length === 0) return null;
  return (
    <div className="candidate-risk">
      <h3>Largest risk</h3>
      {worst ? <FindingLine finding={worst} trade={false} /> : <p>Nothing that is known stands against it.</p>}
    </div>
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
