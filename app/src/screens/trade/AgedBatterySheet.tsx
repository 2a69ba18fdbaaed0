import { type Plan, type TradeResults, yearsTo } from '@kneewall/engine';
import type { Range } from '@kneewall/project';
import { Scroll } from '../../look/Scroll.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';

/** The same year with a battery of each age, and when it may be that old. */
export function AgedBatterySheet({ result, season }: { result: TradeResults['offgrid']; season: Plan['season'] }) {
  const { powerHelps, power } = season;
  if (!powerHelps.ok || !power.ok || !result.life.ok || powerHelps.value.aged.length === 0) return null;
  const { life } = result;
  const { cycles } = power.value;
  const generator = power.value.generator !== undefined;
  const rows = [{ share: 1, year: powerHelps.value.base }, ...powerHelps.value.aged];
  return (
    <Sheet title="As the battery grows old">
      <Scroll label="As the battery grows old">
        <table className="table">
          <thead>
            <tr>
              {[
                'Holds',
                'After',
                ...(generator ? ['Generator runs', 'Starts', 'Fuel'] : []),
                'Held back',
                'House too cold',
              ].map((column) => (
                <th key={column} scope="col">
                  {column}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ share, year }) => (
              <tr key={share}>
                <th scope="row">{share === 1 ? 'all, new' : <Quantity value={share} kind="fraction" />}</th>
                <td>{share === 1 ? '–' : yearsWords(share, life.value, cycles)}</td>
                {generator && (
                  <>
                    <td>{Math.round(year.generator)} h</td>
                    <td>{Math.round(year.starts)}</td>
                    <td>
                      <Quantity value={year.litres / 1000} kind="volume" significant={2} />
                    </td>
                  </>
                )}
                <td>{Math.round(year.held)} h</td>
                <td>{Math.round(year.cold)} h</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
      <p className="field-help">
        By the cycles and years you entered for the battery, or usual ones: age and use both wear it, and at their ends
        four fifths are left. That is common practice, and as wide as it is told. Heat, frost and standing full make it
        faster.
      </p>
    </Sheet>
  );
}

function yearsWords(share: number, { cycles, years }: { cycles: Range; years: Range }, cyclesAYear: number): string {
  const low = yearsTo(share, { cycles: cycles.low, years: years.low }, cyclesAYear, true);
  const high = yearsTo(share, { cycles: cycles.high, years: years.high }, cyclesAYear, false);
  return `${Math.round(low)} to ${Math.round(high)} years`;
}
