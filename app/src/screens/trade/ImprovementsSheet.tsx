import { type Improvement, type Measure, type Plan, sizeStep } from '@kneewall/engine';
import { Scroll } from '../../look/Scroll.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity, QuantityRange } from '../../quantity/Quantity.tsx';
import { JobOffer } from './JobOffer.tsx';
import { OutcomeOr } from './OutcomeOr.tsx';

const words: Readonly<Record<Measure, string>> = {
  seal: 'seal the leaks',
  ceiling: 'insulate the ceilings',
  floor: 'insulate the floor',
  panes: 'second panes on poor windows',
  vents: 'twice the attic vents',
  ducts: 'seal the ducts’ joints',
};

const named = (x: Improvement): string => {
  const text = x.measures.map((m) => words[m]).join(', ');
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
};

/** What can be done to the house beside its unit: each alone, and the best for any money. */
export function ImprovementsSheet({ outcome }: { outcome: Plan['season']['improvements'] }) {
  return (
    <Sheet title="What would help">
      {outcome.ok || outcome.because !== 'pending' ? (
        <OutcomeOr outcome={outcome} what="What could be done to the house">
          {({ single, together }) => (
            <>
              <Table title="Each alone, most for its money first" rows={single} />
              <Table title="Together: nothing cheaper takes off more" rows={together} />
              <p className="field-help">
                A size is about <Quantity value={sizeStep} kind="power" significant={2} />. Costs are common practice
                without a source, in your money, for the work done; get quotes. What several do together was worked out
                together. Old insulation and wiring can hurt: have them looked at before you cover them, and keep flues
                and combustion air as the local code asks when you seal.
              </p>
            </>
          )}
        </OutcomeOr>
      ) : (
        <JobOffer kind="coupling/improvements" name="What would help">
          Sealing of house and ducts, insulation, second panes and vents, alone and in every combination, through the
          cold night, the hot day and a whole year of this house. It takes some seconds.
        </JobOffer>
      )}
    </Sheet>
  );
}

function Table({ title, rows }: { title: string; rows: readonly Improvement[] }) {
  if (rows.length === 0) return null;
  return (
    <Scroll label={title}>
      <table className="table">
        <caption>{title}</caption>
        <thead>
          <tr>
            <th scope="col">What</th>
            <th scope="col">Off the cold night</th>
            <th scope="col">Unit smaller by</th>
            <th scope="col">Off the hot day</th>
            <th scope="col">Heat saved a year</th>
            <th scope="col">Costs about</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((x) => (
            <tr key={x.measures.join(' ')}>
              <th scope="row">{named(x)}</th>
              <td>
                <Quantity value={x.heating} kind="power" significant={2} />
              </td>
              <td>{x.sizesLess > 0 ? `${x.sizesLess} ${x.sizesLess === 1 ? 'size' : 'sizes'}` : 'none'}</td>
              <td>
                <Quantity value={x.cooling} kind="power" significant={2} />
              </td>
              <td>
                <Quantity value={x.heatingEnergy} kind="energy" significant={2} />
              </td>
              <td>
                <QuantityRange range={x.cost} kind="money" />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  );
}
