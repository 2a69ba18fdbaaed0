import type { Plan, PowerHelps } from '@kneewall/engine';
import { Scroll } from '../../look/Scroll.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import { useSession } from '../../services.ts';

type Row = {
  readonly id: string;
  readonly year: PowerHelps['base'];
  readonly alone?: number;
};

/** Every candidate through the same year on one's own power; nothing where there is but one. */
export function UnitsBesideSheet({ plan }: { plan: Plan }) {
  const project = useSession((s) => s.project);
  const { season, trades } = plan;
  const chosen = trades.equipment?.chosen;
  if (!season.powerHelps.ok || !chosen?.ok || season.powerHelps.value.units.length === 0) return null;
  const { base, units } = season.powerHelps.value;
  const aloneCold = season.power.ok ? season.power.value.withoutGenerator?.cold : undefined;
  const rows: Row[] = [
    { id: chosen.value, year: base, ...(aloneCold === undefined ? {} : { alone: aloneCold }) },
    ...units.map((u) => ({ id: u.id, year: u.year, ...(u.alone ? { alone: u.alone.cold } : {}) })),
  ].toSorted(
    (a, b) => a.year.generator - b.year.generator || a.year.litres - b.year.litres || a.year.held - b.year.held,
  );
  const generator = aloneCold !== undefined;
  return (
    <Sheet title="The candidates on this power">
      <Scroll label="The candidates on this power">
        <table className="table">
          <thead>
            <tr>
              {[
                'Unit',
                ...(generator ? ['Generator runs', 'Fuel'] : []),
                'Held back',
                'House too cold',
                ...(generator ? ['Too cold without the generator'] : []),
                'Worst second asks',
                'Inverter starts it',
              ].map((column) => (
                <th key={column} scope="col">
                  {column}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ id, year, alone }) => (
              <tr key={id}>
                <th scope="row">
                  {project?.candidates?.[id]?.name ?? id}
                  {id === chosen.value && <strong> (chosen)</strong>}
                </th>
                {generator && (
                  <>
                    <td>{Math.round(year.generator)} h</td>
                    <td>
                      <Quantity value={year.litres / 1000} kind="volume" significant={2} />
                    </td>
                  </>
                )}
                <td>{Math.round(year.held)} h</td>
                <td>{Math.round(year.cold)} h</td>
                {generator && <td>{Math.round(alone ?? 0)} h</td>}
                <Start plan={plan} id={id} />
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
      <p className="field-help">
        All through the same year, behind the same ducts. The worst second is the unit with the rest of the house and
        the hardest motor starting, or the unit’s own start. A candidate whose sheet lacks something is left out.
      </p>
    </Sheet>
  );
}

function Start({ plan, id }: { plan: Plan; id: string }) {
  const surge = useSession((s) => s.project?.power?.inverter?.surge?.value);
  const asked = plan.trades.circuit?.starts?.[id];
  const gives = surge === undefined ? undefined : typeof surge === 'number' ? surge : surge.likely;
  if (!asked?.ok)
    return (
      <>
        <td>not known</td>
        <td>not known</td>
      </>
    );
  const { low, likely, high } = asked.value;
  const verdict =
    gives === undefined
      ? 'not known'
      : high <= gives
        ? 'yes'
        : likely <= gives
          ? 'just'
          : low <= gives
            ? 'hardly'
            : 'no';
  return (
    <>
      <td>
        <Quantity value={likely} kind="electric-power" significant={2} />
      </td>
      <td>{verdict}</td>
    </>
  );
}
