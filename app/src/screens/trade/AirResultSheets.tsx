import type { Agreement, Plan, TradeResults } from '@kneewall/engine';
import { Scroll } from '../../look/Scroll.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Drivers } from '../../quantity/Drivers.tsx';
import { Quantity, QuantityRange } from '../../quantity/Quantity.tsx';
import { useSession } from '../../services.ts';
import { BalanceSheet } from './BalanceSheet.tsx';
import { CurvesSheet } from './ducts/CurvesSheet.tsx';
import { DuctsSheet } from './ducts/DuctsSheet.tsx';
import { OutcomeOr } from './OutcomeOr.tsx';
import { PressureLadder } from './PressureLadder.tsx';
import { SizesSheet } from './SizesSheet.tsx';
import { WaysSheet } from './WaysSheet.tsx';

type Air = TradeResults['air'];

/** What flows, what uses up the blower's pressure, and what reaches each room. */
export function AirResultSheets({ result, agreement, plan }: { result: Air; agreement: Agreement; plan: Plan }) {
  return (
    <>
      <Sheet title="What flows">
        <OutcomeOr outcome={result.flow} what="The flow">
          {(flow) => (
            <p className="lead">
              The blower moves <Quantity value={flow.likely} kind="flow" /> (<QuantityRange range={flow} kind="flow" />)
              through these ducts
              {result.staticPressure.ok && (
                <>
                  {' '}
                  against <Quantity value={result.staticPressure.value.likely} kind="pressure" /> of static pressure
                </>
              )}
              .
            </p>
          )}
        </OutcomeOr>
        {result.flow.ok && <Drivers spread={result.flow.value} kind="flow" />}
        {agreement.heating && (
          <p>
            On the cold night the air leaves the unit at{' '}
            <Quantity value={agreement.heating.leaving} kind="temperature" />, and{' '}
            <Quantity value={agreement.heating.delivered} kind="power" /> of heat reaches the rooms.
          </p>
        )}
        {result.ladder.ok && <PressureLadder rungs={result.ladder.value} />}
      </Sheet>
      <DuctsSheet plan={plan} />
      <CurvesSheet plan={plan} />
      <SizesSheet outcome={result.sizing} />
      <WaysSheet outcome={plan.season.ways} />
      <RoomFlows rooms={Object.values(result.rooms)} />
      <BalanceSheet outcome={result.balance} />
    </>
  );
}

function RoomFlows({ rooms }: { rooms: readonly Air['rooms'][string][] }) {
  const names = useSession((s) => s.project.house?.rooms);
  if (rooms.length === 0) return null;
  return (
    <Sheet title="What reaches each room">
      <Scroll label="What reaches each room">
        <table className="table">
          <thead>
            <tr>
              <th scope="col">Room</th>
              <th scope="col">Wanted</th>
              <th scope="col">Reaches it</th>
              <th scope="col">Because of</th>
            </tr>
          </thead>
          <tbody>
            {rooms.map(({ room, wanted, reaches, governs }) => (
              <tr key={room}>
                <th scope="row">{names?.[room]?.name ?? room}</th>
                <td>{wanted.ok ? <Quantity value={wanted.value} kind="flow" /> : 'unknown'}</td>
                <td>
                  {reaches.ok ? (
                    <>
                      <Quantity value={reaches.value.likely} kind="flow" /> (
                      <QuantityRange range={reaches.value} kind="flow" />)
                    </>
                  ) : (
                    'unknown'
                  )}
                </td>
                <td>{governs}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
    </Sheet>
  );
}
