import { inHundreds, type LifeCosts, type LifePart, type Plan, type UnitLife } from '@kneewall/engine';
import type { Range } from '@kneewall/project';
import { FoldedTable } from '../../../look/FoldedTable.tsx';
import { Sheet } from '../../../look/Sheet.tsx';
import { Quantity, QuantityRange } from '../../../quantity/Quantity.tsx';
import { OutcomeOr } from '../OutcomeOr.tsx';
import { LifeBars } from './LifeBars.tsx';

/** What each candidate costs over its life, and whether that tells them apart. */
export function LifeCostSheet({ outcome }: { outcome: Plan['season']['lifeCost'] }) {
  return (
    <Sheet title="What each unit costs over its life">
      <OutcomeOr outcome={outcome} what="What the units cost over their lives">
        {(costs) => <Costs costs={costs} />}
      </OutcomeOr>
    </Sheet>
  );
}

const told = ({ low, likely, high }: Range): Range => ({
  low: inHundreds(low),
  likely: inHundreds(likely),
  high: inHundreds(high),
});

function Costs({ costs }: { costs: LifeCosts }) {
  const { units, years, interest, left, uncounted, power } = costs;
  return (
    <>
      <Verdict units={units} />
      <LifeBars units={units} />
      <PartsTable units={units} power={power} />
      <p className="field-help">
        Bars are the likely cost, the line above each reaches from low to high. Over{' '}
        <QuantityRange range={years} kind="count" /> years at <Quantity value={interest.likely} kind="fraction" />{' '}
        interest above inflation, in today’s money.
        {power === 'own'
          ? ' The fuel is that of the whole house, the household’s part alike for all; sun and battery count as paid.'
          : ' The chosen unit’s bill is of its own year; the others follow from it by their seasonal figures.'}{' '}
        What the units share, such as prices, years and the house, moves them together, so that a difference may be sure
        where each cost is not.
      </p>
      {uncounted.includes('generator-wear') && (
        <p>Wear of the generator is not counted: enter what an hour costs under Cost over its life.</p>
      )}
      {uncounted.includes('other-heat') && <p>The stove’s fuel is not counted: enter what it costs.</p>}
      {left.length > 0 && <p>Left out, for want of a price or of rows: {left.map((x) => x.name).join(', ')}.</p>}
    </>
  );
}

/** Which is cheapest, or that nobody can tell. */
function Verdict({ units }: { units: readonly UnitLife[] }) {
  const fit = units.some((u) => !u.unfit) ? units.filter((u) => !u.unfit) : units;
  const [best] = fit;
  if (!best) return null;
  const alike = fit.filter((u) => u !== best && !u.apart);
  const dearer = fit.filter((u) => u.apart);
  return (
    <>
      <p className="lead">
        {alike.length > 0 ? (
          <>
            {best.name} and {alike.map((u) => u.name).join(', ')} cannot be told apart by what is known.
          </>
        ) : (
          <>
            {best.name} costs <QuantityRange range={told(best.total)} kind="money" />
            {dearer.length > 0 && ', the least of all'}.
          </>
        )}{' '}
        {dearer.map((u) => (
          <span key={u.id}>
            {u.name} is dearer by <QuantityRange range={told(u.beyond)} kind="money" />.{' '}
          </span>
        ))}
      </p>
      {units.some((u) => u.unfit) && (
        <p>
          {units.every((u) => u.unfit) ? 'None fits as it stands: ' : 'No match for it, whatever it costs: '}
          {units
            .filter((u) => u.unfit)
            .map(
              (u) =>
                `${u.name} ${u.unfit === 'cold' ? 'does not hold the house alone on the cold night' : 'may not be started by the inverter'}`,
            )
            .join('; ')}
          .
        </p>
      )}
    </>
  );
}

const partTitle: Readonly<Record<LifePart, string>> = {
  purchase: 'To buy',
  incentive: 'Incentives granted',
  fuel: 'Generator fuel',
  wear: 'Generator wear',
  electricity: 'Electricity',
  backup: 'Backup heat',
  otherHeat: 'Stove',
  upkeep: 'Upkeep',
};
const parts = Object.keys(partTitle) as LifePart[];

function PartsTable({ units, power }: { units: readonly UnitLife[]; power: LifeCosts['power'] }) {
  const shown = parts.filter((p) => units.some((u) => Math.abs(u.parts[p]) >= 0.5));
  const taken = power === 'own' ? 'Fuel a year' : 'Energy a year';
  return (
    <FoldedTable
      title="The parts"
      columns={['Unit', ...shown.map((p) => partTitle[p]), 'Likely sum', 'From low to high', taken]}
    >
      {units.map((u) => (
        <tr key={u.id}>
          <th scope="row">
            {u.name}
            {u.chosen && <strong> (chosen)</strong>}
          </th>
          {shown.map((p) => (
            <td key={p}>
              <Quantity value={Math.round(u.parts[p])} kind="money" />
            </td>
          ))}
          <td>
            <Quantity value={inHundreds(u.total.likely)} kind="money" />
          </td>
          <td>
            <QuantityRange range={told(u.total)} kind="money" />
          </td>
          <td>
            {power === 'own' ? (
              <Quantity value={u.takes.litres / 1000} kind="volume" significant={2} />
            ) : (
              <Quantity value={u.takes.energy} kind="energy" significant={2} />
            )}
          </td>
        </tr>
      ))}
    </FoldedTable>
  );
}
