import type { HeldBack, Plan, PowerYear } from '@kneewall/engine';
import { shortMonths } from '@kneewall/project';
import { FoldedTable } from '../../look/FoldedTable.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import { OutcomeOr } from './OutcomeOr.tsx';

const total = (year: PowerYear, of: keyof PowerYear['months'][number]): number =>
  year.months.reduce((sum, month) => sum + month[of], 0);

/** What a year on one's own power comes to. */
export function PowerYearSheet({ outcome }: { outcome: Plan['season']['power'] }) {
  return (
    <Sheet title="A year on your own power">
      <OutcomeOr outcome={outcome} what="The year on your own power">
        {(year) => (
          <>
            <p className="lead">
              The unit draws <Quantity value={total(year, 'unit')} kind="energy" /> and the household{' '}
              <Quantity value={total(year, 'household')} kind="energy" />; the sun gives{' '}
              <Quantity value={total(year, 'used')} kind="energy" /> of the{' '}
              <Quantity value={total(year, 'sun')} kind="energy" /> it could.
            </p>
            {year.generator && (
              <p>
                The generator runs for {Math.round(year.generator.hours)} hours, starts {year.generator.starts} times
                and burns <Quantity value={year.generator.litres / 1000} kind="volume" significant={2} />.
              </p>
            )}
            <Asides year={year} />
            <DarkDaysTable year={year} />
            <MonthTable year={year} />
            <p className="field-help">
              Battery and inverter hold the unit back in the very quarter of an hour in which they are short. One
              ordinary year states energy and promises nothing: the twenty winters below say how often it fails.
              Household use by the hour is a usual day’s unless you entered your own.
            </p>
          </>
        )}
      </OutcomeOr>
    </Sheet>
  );
}

function Asides({ year }: { year: PowerYear }) {
  const { heat, withoutGenerator: alone } = year;
  return (
    <ul className="asides">
      <li>
        {heat.hours < 1 ? (
          'Power holds the heat back in no hour.'
        ) : (
          <>
            Power holds the heat back for {Math.round(heat.hours)} hours. <Coldness held={heat} />
          </>
        )}
      </li>
      {alone && (
        <li>
          If the generator did not start it would hold the heat back for {Math.round(alone.hours)} hours.{' '}
          <Coldness held={alone} />
        </li>
      )}
      {year.coldMornings > 0 && (
        <li>
          On {year.coldMornings} mornings the cells are too cold to charge;{' '}
          <Quantity value={year.refused} kind="energy" significant={2} /> of sun are turned away.
        </li>
      )}
      {year.householdShort >= 1 && (
        <li>
          The household goes without <Quantity value={year.householdShort} kind="energy" significant={2} />.
        </li>
      )}
    </ul>
  );
}

function Coldness({ held }: { held: HeldBack }) {
  return (
    <>
      The house is cold for {Math.round(held.cold)} of them, at worst{' '}
      <Quantity value={held.lowest} kind="temperature" />
      {held.burning > 0 && (
        <>
          , with the stove burning for {Math.round(held.burning)} hours and giving{' '}
          <Quantity value={held.stove} kind="energy" significant={2} />, fed as its room asks, at night too
        </>
      )}
      .
    </>
  );
}

function DarkDaysTable({ year }: { year: PowerYear }) {
  return (
    <FoldedTable
      title="Without any sun, by the day’s cold"
      columns={['Outdoor air', 'Drawn a day', 'A full battery lasts']}
    >
      {year.darkDays.map((d) => (
        <tr key={d.outdoor}>
          <th scope="row">
            <Quantity value={d.outdoor} kind="temperature" />
          </th>
          <td>
            <Quantity value={d.daily} kind="energy" />
          </td>
          <td>{d.days < 2 ? `${Math.round(d.days * 24)} h` : `${d.days.toFixed(1)} days`}</td>
        </tr>
      ))}
    </FoldedTable>
  );
}

const columns = [
  ['Household', 'household'],
  ['Unit', 'unit'],
  ['Never rests', 'standing'],
  ['Sun it could give', 'sun'],
  ['Sun used', 'used'],
  ['Generator', 'generator'],
] as const;

function MonthTable({ year }: { year: PowerYear }) {
  return (
    <FoldedTable title="The months in numbers" columns={['Month', ...columns.map(([word]) => word)]}>
      {year.months.map((month, m) => (
        <tr key={shortMonths[m]}>
          <th scope="row">{shortMonths[m]}</th>
          {columns.map(([, key]) => (
            <td key={key}>
              <Quantity value={month[key]} kind="energy" significant={2} />
            </td>
          ))}
        </tr>
      ))}
    </FoldedTable>
  );
}
