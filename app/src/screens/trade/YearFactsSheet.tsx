import { degreeDayBase, monthOfDay, type TradeResults } from '@kneewall/engine';
import { monthNames } from '@kneewall/project';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';

type Facts = Extract<TradeResults['climate']['facts'], { ok: true }>['value'];

/** The month of a day of the year, 1 to 365, in words. */
const monthOf = (day: number): string => monthNames[monthOfDay(day - 1)] ?? '';

/** What an imported year holds that the plan leans on. */
export function YearFactsSheet({ facts }: { facts: Facts }) {
  return (
    <Sheet title="What the year holds">
      <ul className="asides">
        <li>
          All but 35 hours are warmer than <Quantity value={facts.heating996} kind="temperature" />, all but 88 warmer
          than <Quantity value={facts.heating99} kind="temperature" />.
        </li>
        <li>
          35 hours are hotter than <Quantity value={facts.cooling004} kind="temperature" />, 88 hotter than{' '}
          <Quantity value={facts.cooling01} kind="temperature" />, 175 hotter than{' '}
          <Quantity value={facts.cooling02} kind="temperature" />. One year estimates these; published figures rest on
          many.
        </li>
        <li>
          The coldest day is in {monthOf(facts.coldestDay.day)}:{' '}
          <Quantity value={facts.coldestDay.mean} kind="temperature" /> as a mean.
        </li>
        <li>
          The ten darkest days in a row begin in {monthOf(facts.darkestTenDays.day)} and bring{' '}
          <Quantity value={facts.darkestTenDays.sun} kind="energy" /> on each square metre of level ground. The longest
          run of days with less than half of their month’s sun is {facts.longestDull}.
        </li>
        <li>
          <DegreeDays of={facts.degreeDays.heating} /> of heating and <DegreeDays of={facts.degreeDays.cooling} /> of
          cooling, about <Quantity value={degreeDayBase} kind="temperature" />.
        </li>
        <li>
          The ground’s surface swings <Quantity value={facts.ground.amplitude} kind="temperature-difference" /> about{' '}
          <Quantity value={facts.ground.mean} kind="temperature" />.
        </li>
      </ul>
    </Sheet>
  );
}

const DegreeDays = ({ of }: { of: number }) => (
  <Quantity value={24 * of} kind="degree-hours" unit={{ us: '°F days', si: 'K days' }} />
);
