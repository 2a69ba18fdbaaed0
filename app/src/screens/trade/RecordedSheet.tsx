import { type Plan, type Recorded, recordedKind } from '@kneewall/engine';
import { monthNames } from '@kneewall/project';
import { Scroll } from '../../look/Scroll.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import { JobOffer } from './JobOffer.tsx';
import { OutcomeOr } from './OutcomeOr.tsx';

/** House, unit and power through winters that were measured, beside those that are made. */
export function RecordedSheet({ season: { recorded } }: { season: Plan['season'] }) {
  const none = !recorded.ok && recorded.because === 'missing' && recorded.paths.includes('site.recorded');
  return (
    <Sheet title="Recorded winters">
      {none ? (
        <p>
          Import years that were measured near the house, one file each, under “Recorded years” on the page of the
          climate: then it reads here in how many of them the house grew cold.
        </p>
      ) : !recorded.ok && recorded.because === 'pending' ? (
        <JobOffer kind={recordedKind} name="Recorded winters">
          The same house, unit and power through the winter of each recorded year: what has been, beside what is made. A
          few seconds for each.
        </JobOffer>
      ) : (
        <OutcomeOr outcome={recorded} what="Recorded winters">
          {(found) => <Told recorded={found} />}
        </OutcomeOr>
      )}
    </Sheet>
  );
}

const count = (n: number, of: number): string => (n === 0 ? `none of ${of}` : `${n} of ${of}`);

function Told({ recorded: { winters, generator, months } }: { recorded: Recorded }) {
  const over = (column: 'cold' | 'aloneCold', hours: number): string =>
    count(winters.filter((w) => w[column] > hours).length, winters.length);
  return (
    <>
      <p className="lead">
        In {over('cold', 24)} recorded winters the house is too cold for more than a day for want of power
        {generator && <>; if the generator never starts, in {over('aloneCold', 168)} for more than a week</>}.
      </p>
      <Scroll label="Each recorded winter">
        <table className="table">
          <thead>
            <tr>
              <th scope="col">
                {monthNames[months[0] ?? 9]} to {monthNames[months.at(-1) ?? 3]} of
              </th>
              <th scope="col">Mean outdoors</th>
              <th scope="col">Hours without heat</th>
              <th scope="col">Coldest room</th>
              {generator && <th scope="col">Generator, hours</th>}
              {generator && <th scope="col">Fuel</th>}
              {generator && <th scope="col">Hours without heat if it never starts</th>}
            </tr>
          </thead>
          <tbody>
            {winters.map((w) => (
              <tr key={w.id}>
                <th scope="row">{w.name}</th>
                <td>
                  <Quantity value={w.outdoor} kind="temperature" />
                </td>
                <td>{Math.round(w.cold)}</td>
                <td>
                  <Quantity value={w.lowest} kind="temperature" />
                </td>
                {generator && <td>{Math.round(w.generatorHours)}</td>}
                {generator && (
                  <td>
                    <Quantity value={w.litres / 1000} kind="volume" significant={2} />
                  </td>
                )}
                {generator && <td>{Math.round(w.aloneCold)}</td>}
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
      <p className="field-help">
        These winters were measured. A file of one calendar year holds the end of one winter and the beginning of the
        next; both are run as one. They say what has been, not how rare the next is.
      </p>
    </>
  );
}
