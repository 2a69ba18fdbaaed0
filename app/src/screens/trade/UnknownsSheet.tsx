import { type Study, type TradeResults, wayToKnow } from '@kneewall/engine';
import { pathLabel } from '@kneewall/project';
import { Scroll } from '../../look/Scroll.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import { RangeTape } from '../../quantity/RangeTape.tsx';
import { useSession } from '../../services.ts';
import { JobOffer } from './JobOffer.tsx';

type Loads = TradeResults['loads'];
const shown = 8;
/** Shares below which a rank is chance: of the range, and of the purchase. */
const chance = { heating: 0.01, decides: 0.02 };

/** What is not known about the house, ranked by what it would be worth to know it. */
export function UnknownsSheet({ loads }: { loads: Loads }) {
  return (
    <Sheet title="Worth knowing">
      {loads.study.ok ? (
        <Found study={loads.study.value} totals={loads.totals} />
      ) : (
        <JobOffer kind="loads/study" name="A thousand houses">
          The ranges above move one input at a time. A thousand houses, each as this one may be, tell how likely each
          load is and which measurement would decide the size of the unit. It takes about half a minute.
        </JobOffer>
      )}
    </Sheet>
  );
}

function Found({ study, totals }: { study: Study; totals: Loads['totals'] }) {
  const project = useSession((s) => s.project);
  const share = (path: string): number | undefined =>
    totals.ok ? totals.value.find((t) => t.path === path)?.total : undefined;
  return (
    <>
      <p>
        In eight of ten of {study.samples} houses that fit what is entered, the coldest night takes between{' '}
        <Quantity value={study.heating.p10} kind="power" /> and <Quantity value={study.heating.p90} kind="power" />.
      </p>
      <RangeTape range={{ low: study.heating.p10, likely: study.heating.p50, high: study.heating.p90 }} kind="power" />
      <p>
        The hottest afternoon takes between <Quantity value={study.cooling.p10} kind="power" /> and{' '}
        <Quantity value={study.cooling.p90} kind="power" />.
      </p>
      <Scroll label="Worth knowing">
        <table className="table">
          <caption>Measure the first of these before you order.</caption>
          <thead>
            <tr>
              <th scope="col">Unknown</th>
              <th scope="col">Share of the heating range</th>
              <th scope="col">Right size bought more often by</th>
              <th scope="col">How</th>
            </tr>
          </thead>
          <tbody>
            {study.unknowns
              .filter((u) => u.heating >= chance.heating || u.decides >= chance.decides)
              .slice(0, shown)
              .map((u) => {
                const way = wayToKnow(u.path);
                const total = share(u.path);
                return (
                  <tr key={u.path}>
                    <th scope="row">{pathLabel(u.path, project)}</th>
                    <td>
                      <Quantity value={u.heating} kind="fraction" significant={2} />
                      {total !== undefined && (
                        <>
                          , with others <Quantity value={total} kind="fraction" significant={2} />
                        </>
                      )}
                    </td>
                    <td>
                      <Quantity value={u.decides} kind="fraction" significant={2} />
                    </td>
                    <td className="long">{way ? `${way.how}, about ${way.minutes} minutes` : 'Measure it'}</td>
                  </tr>
                );
              })}
          </tbody>
        </table>
      </Scroll>
    </>
  );
}
