import type { TradeResults } from '@kneewall/engine';
import { partShares, partTitle } from '@kneewall/engine';
import { Quantity, QuantityRange } from '../../quantity/Quantity.tsx';
import { OutcomeOr } from './OutcomeOr.tsx';
import { PartsBars } from './PartsBars.tsx';

type RoomLoad = TradeResults['loads']['rooms'][string];

/** One room: a sentence first, its parts when asked. */
export function RoomCard({ room }: { room: RoomLoad }) {
  const most = partShares(room.heatingParts)[0];
  return (
    <article className="sheet room-card">
      <h3>{room.name}</h3>
      <OutcomeOr outcome={room.heating} what="Heat">
        {(heating) => (
          <p>
            Loses{' '}
            <strong>
              <Quantity value={heating.likely} kind="power" />
            </strong>{' '}
            on the cold night (<QuantityRange range={heating} kind="power" />)
            {most && <>, most of it through {partTitle[most.part].toLowerCase()}</>}.
          </p>
        )}
      </OutcomeOr>
      <OutcomeOr outcome={room.cooling} what="Cooling">
        {(cooling) => (
          <p>
            Takes in{' '}
            <strong>
              <Quantity value={cooling.likely} kind="power" />
            </strong>{' '}
            on the hot afternoon.
          </p>
        )}
      </OutcomeOr>
      {room.heatingParts.length + room.coolingParts.length > 0 && (
        <details className="fold">
          <summary>
            <span className="fold-title">
              The parts<span className="unseen"> of {room.name}</span>
            </span>
          </summary>
          <PartsBars parts={room.heatingParts} title="On the cold night" />
          <PartsBars parts={room.coolingParts} title="On the hot afternoon" />
        </details>
      )}
    </article>
  );
}
