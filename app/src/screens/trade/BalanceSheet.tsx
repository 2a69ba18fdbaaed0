import {
  type AirBalance,
  balanceSentence,
  beyondWords,
  damperWords,
  printerFor,
  type RoomBalance,
  type SeasonBalance,
  shortWords,
  type TradeResults,
} from '@kneewall/engine';
import { Scroll } from '../../look/Scroll.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import { useSession, useUnits } from '../../services.ts';
import { DrawDampers } from './DrawDampers.tsx';
import { OutcomeOr } from './OutcomeOr.tsx';

/** How dampers share the air out among the rooms, in the season that governs and in the other. */
export function BalanceSheet({ outcome }: { outcome: TradeResults['air']['balance'] }) {
  return (
    <Sheet title="Each room its share">
      <OutcomeOr outcome={outcome} what="The dampers">
        {(balance) => <Seasons balance={balance} />}
      </OutcomeOr>
    </Sheet>
  );
}

function Seasons({ balance }: { balance: AirBalance }) {
  const other = balance.governs === 'heating' ? 'cooling' : 'heating';
  return (
    <>
      <OutcomeOr outcome={balance[balance.governs]} what={`The dampers for ${balance.governs}`}>
        {(season) => (
          <>
            <Season season={season} openFlow={balance.openFlow} governs />
            <DrawDampers settings={season.settings} />
          </>
        )}
      </OutcomeOr>
      <details className="fold">
        <summary>
          <span className="fold-title">In the other season: {other}</span>
        </summary>
        <OutcomeOr outcome={balance[other]} what={`The dampers for ${other}`}>
          {(season) => <Season season={season} openFlow={balance.openFlow} governs={false} />}
        </OutcomeOr>
      </details>
      <p className="field-help">
        A share is a room’s part of the load of all rooms with a register. Angles are of a round blade from open, by a
        published table, to the nearest 5°; a damper of your make may stand otherwise, so measure. Dampers belong at the
        plenum, not at the register, where they hiss. Never shut one altogether.
      </p>
    </>
  );
}

type SeasonProps = { season: SeasonBalance; openFlow: number; governs: boolean };

function Season({ season, openFlow, governs }: SeasonProps) {
  const rooms = useSession((s) => s.project.house?.rooms);
  const print = printerFor(useUnits());
  const nameOf = (room: string) => rooms?.[room]?.name ?? room;
  const more = [shortWords(season, nameOf, print), beyondWords(season)].filter((line) => line !== '');
  const label = `Shares for ${season.season}`;
  return (
    <>
      <p className={governs ? 'lead' : undefined}>{balanceSentence(season, openFlow, print)}</p>
      <Scroll label={label}>
        <table className="table">
          <thead>
            <tr>
              <th scope="col">Room</th>
              <th scope="col">Wants of all the air</th>
              <th scope="col">As drawn, of that</th>
              <th scope="col">All dampers open</th>
              {!governs && <th scope="col">Set for the main season</th>}
              <th scope="col">Balanced</th>
              <th scope="col">Its dampers</th>
            </tr>
          </thead>
          <tbody>
            {season.rooms.map((room) => (
              <Room key={room.room} room={room} name={nameOf(room.room)} season={season} governs={governs} />
            ))}
          </tbody>
        </table>
      </Scroll>
      {more.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </>
  );
}

type RoomProps = { room: RoomBalance; name: string; season: SeasonBalance; governs: boolean };

function Room({ room, name, season, governs }: RoomProps) {
  const print = printerFor(useUnits());
  const dampers = season.settings.filter((s) => s.place.room === room.room);
  return (
    <tr>
      <th scope="row">{name}</th>
      <td>
        <Quantity value={room.share} kind="fraction" />
      </td>
      <Part value={room.drawn} />
      <Part value={room.open} />
      {!governs && <Part value={room.asSet} />}
      <td>
        {room.balanced === undefined ? 'wants none' : <Quantity value={room.balanced} kind="fraction" />} (
        <Quantity value={room.flow} kind="flow" />)
      </td>
      <td className="long">
        {dampers.map((setting) => (
          <div key={setting.place.id}>{damperWords(setting, print)}</div>
        ))}
      </td>
    </tr>
  );
}

const Part = ({ value }: { value: number | undefined }) => (
  <td>{value === undefined ? 'wants none' : <Quantity value={value} kind="fraction" />}</td>
);
