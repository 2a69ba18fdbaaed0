import type { Plan, UnitYear } from '@kneewall/engine';
import { FoldedTable } from '../../look/FoldedTable.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import { useSession } from '../../services.ts';
import { OutcomeOr } from './OutcomeOr.tsx';
import { WinterRibbon } from './WinterRibbon.tsx';

/** A year with the chosen unit behind the ducts drawn: how it runs, what it takes, which rooms follow. */
export function UnitYearSheet({ outcome }: { outcome: Plan['season']['unitYear'] }) {
  const rooms = useSession((s) => s.project.house?.rooms);
  const nameOf = (id: string): string => rooms?.[id]?.name ?? id;
  return (
    <Sheet title="A year with this unit">
      <OutcomeOr outcome={outcome} what="The year with this unit">
        {(year) => (
          <>
            <Energy year={year} />
            <WinterRibbon title="Heating, month by month" months={year.winter} />
            <WinterRibbon title="Cooling, month by month" months={year.summer} />
            {!year.lowestKnown && (
              <p className="not-known">
                The data sheet shows no lowest speed, so nobody can tell steady hours from hours of stopping and
                starting.
              </p>
            )}
            <Asides year={year} />
            <FoldedTable
              title="The rooms, with one thermostat"
              columns={['Room', 'Hours too cold', 'Hours too warm', 'Lowest', 'Highest']}
            >
              {Object.entries(year.rooms).map(([id, room]) => (
                <tr key={id}>
                  <th scope="row">
                    {nameOf(id)}
                    {id === year.thermostat && ' (thermostat)'}
                  </th>
                  <td>{Math.round(room.cold)}</td>
                  <td>{Math.round(room.hot)}</td>
                  <td>
                    <Quantity value={room.lowest} kind="temperature" />
                  </td>
                  <td>
                    <Quantity value={room.highest} kind="temperature" />
                  </td>
                </tr>
              ))}
            </FoldedTable>
            <p className="field-help">
              Too cold and too warm: by more than a degree, while the unit runs. One ordinary year states energy, not
              what a rare winter brings.
            </p>
          </>
        )}
      </OutcomeOr>
    </Sheet>
  );
}

function Energy({ year }: { year: UnitYear }) {
  const { heating, cooling } = year;
  const power = heating.compressor + heating.strips;
  return (
    <>
      <p className="lead">
        It makes <Quantity value={heating.heat} kind="energy" /> of heat from <Quantity value={power} kind="energy" />{' '}
        of electricity
        {power > 0 && (
          <>
            : <Quantity value={heating.heat / power} kind="number" significant={2} /> times as much
          </>
        )}
        .
      </p>
      <p>
        The strips are <Quantity value={heating.strips} kind="energy" /> of it. Cooling takes{' '}
        <Quantity value={cooling.compressor} kind="energy" /> of electricity for{' '}
        <Quantity value={cooling.sensible + cooling.latent} kind="energy" />.
      </p>
    </>
  );
}

function Asides({ year }: { year: UnitYear }) {
  const lost = year.heating.heat - year.perfectDucts.heat;
  return (
    <ul className="asides">
      <li>
        <Quantity value={lost} kind="energy" /> of the heat only makes good what the ducts lose and leak.
      </li>
      {year.attic && (
        <li>
          The attic reaches <Quantity value={year.attic.most} kind="temperature" /> with these ducts,{' '}
          <Quantity value={year.attic.withPerfect} kind="temperature" /> if they neither leaked nor lost.
        </li>
      )}
      {year.dampHours >= 1 && (
        <li>The air stays above 60 % humidity for {Math.round(year.dampHours)} of the hours in which it cools.</li>
      )}
      {year.beyond >= 1 && (
        <li>
          {Math.round(year.beyond)} hours are colder than the data sheet goes: there its coldest row is used, which is
          too kind.
        </li>
      )}
    </ul>
  );
}
