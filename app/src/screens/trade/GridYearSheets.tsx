import type { GridYear, Plan } from '@kneewall/engine';
import { shortMonths } from '@kneewall/project';
import { FoldedTable } from '../../look/FoldedTable.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import { useSession } from '../../services.ts';
import { OutcomeOr } from './OutcomeOr.tsx';

type Bills = NonNullable<GridYear['bills']>;

/** A year on the grid: what the unit costs by the hour's price, and how an outage goes. */
export function GridYearSheets({ outcome }: { outcome: Plan['season']['gridYear'] }) {
  return (
    <>
      <Sheet title="A year on the grid">
        <OutcomeOr outcome={outcome} what="The year on the grid">
          {(year) => <Year year={year} />}
        </OutcomeOr>
      </Sheet>
      {outcome.ok && outcome.value.outage && (
        <Sheet title="When the grid fails">
          <Outage outage={outcome.value.outage} />
        </Sheet>
      )}
    </>
  );
}

function Year({ year }: { year: GridYear }) {
  const { bills } = year;
  const cost = bills ? bills.all.total - bills.without.total : undefined;
  return (
    <>
      <p className="lead">
        The unit draws <Quantity value={year.unit} kind="energy" /> in an ordinary year
        {cost === undefined ? '' : ` and costs ${Math.round(cost)} of your money`}; the household takes{' '}
        <Quantity value={year.household} kind="energy" />
        {year.sun > 0 && (
          <>
            , and your panels give <Quantity value={year.sun} kind="energy" />
          </>
        )}
        .
      </p>
      {bills ? (
        <>
          <Parts bills={bills} />
          <Months bills={bills} />
          <p className="field-help">
            What the unit costs is the bill with it less the bill without it. Every day of the week is taken alike, and
            a charge for being connected is left out: you pay it either way.
          </p>
        </>
      ) : (
        <p className="field-help">Enter below what the grid charges to see what that costs.</p>
      )}
    </>
  );
}

function Parts({ bills: { all, without } }: { bills: Bills }) {
  const named = useSession((s) => s.project?.power?.tariff?.bands);
  const row = (name: string, energy: number | undefined, money: number) => (
    <tr key={name}>
      <th scope="row">{name}</th>
      <td>{energy === undefined ? '–' : <Quantity value={energy} kind="energy" significant={2} />}</td>
      <td>{Math.round(money)}</td>
    </tr>
  );
  return (
    <FoldedTable title="Where the money goes" columns={['The unit’s part', 'Energy', 'Money']}>
      {all.bands.map((band, i) => {
        const { energy, money } = without.bands[i] ?? { energy: 0, money: 0 };
        const name = band.id === undefined ? 'All other hours' : (named?.[band.id]?.name ?? band.id);
        return row(name, band.energy - energy, band.money - money);
      })}
      {all.demand > 0 && row('Highest quarter of an hour', undefined, all.demand - without.demand)}
      {all.fedIn !== without.fedIn && row('Less fed in', undefined, without.fedIn - all.fedIn)}
    </FoldedTable>
  );
}

function Months({ bills: { all, without } }: { bills: Bills }) {
  return (
    <FoldedTable title="The months in numbers" columns={['Month', 'Bill', 'Of it the unit', 'Highest power']}>
      {all.months.map((money, m) => (
        <tr key={shortMonths[m]}>
          <th scope="row">{shortMonths[m]}</th>
          <td>{Math.round(money)}</td>
          <td>{Math.round(money - (without.months[m] ?? 0))}</td>
          <td>
            <Quantity value={(all.highest[m] ?? 0) * 1000} kind="electric-power" significant={2} />
          </td>
        </tr>
      ))}
    </FoldedTable>
  );
}

function Outage({ outage }: { outage: NonNullable<GridYear['outage']> }) {
  const whole = outage.heat >= 72;
  return (
    <>
      <p className="lead">
        {whole
          ? 'From a full battery the heat stays on for three days.'
          : `From a full battery the heat stays on for ${outage.heat.toFixed(1)} hours.`}
      </p>
      <ul className="asides">
        <li>
          That is the hardest day, of <Quantity value={outage.outdoor} kind="temperature" /> on average, from{' '}
          {Math.round(outage.hour)}:00 on: the hardest hour of the coldest day, tried on every other day too.
        </li>
        <li>
          Of {outage.starts} starts, one a day,{' '}
          {outage.through.map((t) => `${t.starts} keep the heat on for ${t.hours} hours`).join(', ')}.
        </li>
        <li>
          The room with the thermostat falls below <Quantity value={15} kind="temperature" />{' '}
          {outage.warm >= 72 ? 'in none of the three days' : `after ${outage.warm.toFixed(1)} hours`}; a day on it
          stands at <Quantity value={outage.afterDay} kind="temperature" />, three days on at{' '}
          <Quantity value={outage.afterThree} kind="temperature" />.
        </li>
      </ul>
      <p className="field-help">
        No sun is counted, and the household takes only what must not stop. Whether the inverter may feed the house when
        the grid is down, and through what switch, is for a licensed electrician and your grid’s rules.
      </p>
    </>
  );
}
