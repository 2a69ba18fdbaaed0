import type { Plan, TradeResults } from '@kneewall/engine';
import { Sheet } from '../../look/Sheet.tsx';
import { Drivers } from '../../quantity/Drivers.tsx';
import { Quantity, QuantityRange } from '../../quantity/Quantity.tsx';
import { RangeTape } from '../../quantity/RangeTape.tsx';
import { HotDaySheet } from './HotDaySheet.tsx';
import { HouseYearSheet } from './HouseYearSheet.tsx';
import { ImprovementsSheet } from './ImprovementsSheet.tsx';
import { OutcomeOr } from './OutcomeOr.tsx';
import { PartsBars } from './PartsBars.tsx';
import { RoomCard } from './RoomCard.tsx';
import { UnknownsSheet } from './UnknownsSheet.tsx';

type Loads = TradeResults['loads'];

/** The whole house in sentences, then a card for each room. */
export function LoadsResultSheets({ result, season }: { result: Loads; season: Plan['season'] }) {
  const rooms = Object.values(result.rooms);
  return (
    <>
      <Sheet title="The house">
        <OutcomeOr outcome={result.heating} what="Heat on the coldest night">
          {(heating) => (
            <>
              <p className="lead">
                On the coldest normal night the house needs <Quantity value={heating.likely} kind="power" /> of heat.
              </p>
              <RangeTape range={heating} kind="power" />
              <Drivers spread={heating} kind="power" />
            </>
          )}
        </OutcomeOr>
        <OutcomeOr outcome={result.cooling} what="Cooling on the hottest afternoon">
          {({ sensible, latent }) => (
            <>
              <p>
                On the hottest normal afternoon it needs <Quantity value={sensible.likely} kind="power" /> of cooling (
                <QuantityRange range={sensible} kind="power" />) and <Quantity value={latent.likely} kind="power" /> of
                drying.
              </p>
              <Drivers spread={sensible} kind="power" />
            </>
          )}
        </OutcomeOr>
        <div className="side-by-side">
          <PartsBars parts={result.heatingParts} title="Where the heat goes on the cold night" />
          <PartsBars parts={result.coolingParts} title="Where the heat comes from on the hot afternoon" />
        </div>
        <Aside result={result} />
      </Sheet>
      {rooms.length > 0 && (
        <ul className="room-cards" aria-label="Rooms">
          {rooms.map((room) => (
            <li key={room.room}>
              <RoomCard room={room} />
            </li>
          ))}
        </ul>
      )}
      <ImprovementsSheet outcome={season.improvements} />
      <UnknownsSheet loads={result} />
      <HotDaySheet days={result.days} />
      <HouseYearSheet year={result.year} />
    </>
  );
}

function Aside({ result }: { result: Loads }) {
  const { learned } = result;
  return (
    <ul className="asides">
      {learned?.own.heating.ok && (
        <li>
          Scaled by what the log “{learned.log}” taught: <Quantity value={learned.times.likely} kind="fraction" /> (
          <QuantityRange range={learned.times} kind="fraction" />) of the plan’s own loss. By the plan alone it would be{' '}
          <Quantity value={learned.own.heating.value.likely} kind="power" /> of heat (
          <QuantityRange range={learned.own.heating.value} kind="power" />
          ). It is taken back on the page of commissioning.
        </li>
      )}
      {result.balanceTemperature.ok && (
        <li>
          Above <Quantity value={result.balanceTemperature.value} kind="temperature" /> outdoors no heat is needed.
        </li>
      )}
      {result.atticNight.ok && result.atticDay.ok && (
        <li>
          The attic stands at <QuantityRange range={result.atticNight.value} kind="temperature" /> on that night and at{' '}
          <QuantityRange range={result.atticDay.value} kind="temperature" /> on that afternoon.
        </li>
      )}
      {result.sums?.ok && (
        <li>
          Sums of steady parts, as handbooks have them, would say{' '}
          <Quantity value={result.sums.value.heating} kind="power" /> and{' '}
          <Quantity value={result.sums.value.cooling} kind="power" />: they leave out what walls and furniture hold
          back.
        </li>
      )}
      {result.winter.ok && (
        <li>
          Last winter the fuel brought <QuantityRange range={result.winter.value.burned} kind="energy" /> indoors; the
          house as entered would have taken <QuantityRange range={result.winter.value.computed} kind="energy" />.
        </li>
      )}
    </ul>
  );
}
