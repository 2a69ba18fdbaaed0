import { hardSteps, type Plan, type Way } from '@kneewall/engine';
import { Scroll } from '../../look/Scroll.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity, QuantityRange } from '../../quantity/Quantity.tsx';
import { useSession } from '../../services.ts';
import { OutcomeOr } from './OutcomeOr.tsx';

const words: Readonly<Record<Way['id'], string>> = {
  'as-drawn': 'As they are drawn',
  sealed: 'Every joint sealed',
  wrapped: 'Sealed and wrapped to R-8',
  buried: 'Sealed, wrapped, deep in the attic’s insulation',
  resized: 'Made anew in the best sizes, sealed and wrapped',
  inside: 'Unit in a closet, all ducts inside the rooms',
  kneewall: 'Unit and ducts behind the knee wall',
  rooms: 'No ducts: small units in the rooms',
};

/** What to do with the ducts, each way run through the year with the chosen unit. */
export function WaysSheet({ outcome }: { outcome: Plan['season']['ways'] }) {
  const rooms = useSession((s) => s.project.house?.rooms);
  return (
    <Sheet title="Where to build it; keep, patch or replace">
      <OutcomeOr outcome={outcome} what="The ways to go with the ducts">
        {({ ways, changes }) => {
          const generator = ways.some((w) => w.generator !== undefined);
          return (
            <>
              <Scroll label="Ways to go with the ducts" stacked>
                <table className="table">
                  <thead>
                    <tr>
                      <th scope="col">The ducts</th>
                      <th scope="col">Air moved</th>
                      <th scope="col">Leaks</th>
                      <th scope="col">Heat a year</th>
                      <th scope="col">Reaches the rooms</th>
                      <th scope="col">Power for it</th>
                      {generator && <th scope="col">Generator</th>}
                      <th scope="col">Coldest room</th>
                      <th scope="col">Costs about</th>
                      <th scope="col">The hard part</th>
                    </tr>
                  </thead>
                  <tbody>
                    {ways.map((way) => (
                      <Row
                        key={way.id}
                        way={way}
                        generator={generator}
                        room={rooms?.[way.coldest.room]?.name ?? way.coldest.room}
                      />
                    ))}
                  </tbody>
                </table>
              </Scroll>
              {changes[0] && (
                <p>
                  The section to change first is “{changes[0].name}”: <Quantity value={changes[0].to} kind="length" />{' '}
                  instead of <Quantity value={changes[0].from} kind="length" /> moves{' '}
                  <Quantity value={changes[0].flow} kind="flow" /> in all.
                </p>
              )}
              <p className="field-help">
                Each way is run through an ordinary year with one thermostat. Costs are common practice without a
                source, in your money; get quotes. Burying ducts is allowed in some places only, with insulation under
                the jacket and above; ask the building office. Old duct insulation and tape may hold asbestos: have them
                looked at before you touch them. What a place behind a knee wall and units in the rooms take is common
                practice, given as a range; units in the rooms cost that in place of the unit and its ducts.
              </p>
            </>
          );
        }}
      </OutcomeOr>
    </Sheet>
  );
}

function Row({ way, room, generator }: { way: Way; room: string; generator: boolean }) {
  return (
    <tr>
      <th scope="row">
        {words[way.id]}
        {way.units === undefined ? '' : `, ${way.units} of them`}
      </th>
      <td>{way.id === 'rooms' ? '–' : <Quantity value={way.flow} kind="flow" />}</td>
      <td>{way.id === 'rooms' ? '–' : <Quantity value={way.leaks} kind="fraction" />}</td>
      <td>
        <Quantity value={way.heat} kind="energy" significant={3} />
      </td>
      <td>
        <Quantity value={way.delivered} kind="fraction" />
      </td>
      <td>
        {way.about ? (
          <QuantityRange range={{ ...way.about, likely: way.electricity }} kind="energy" />
        ) : (
          <Quantity value={way.electricity} kind="energy" significant={3} />
        )}
      </td>
      {generator && <td>{way.generator === undefined ? '' : `${Math.round(way.generator)} hours`}</td>}
      <td>{way.coldest.hours < 1 ? 'none' : `${room}, ${Math.round(way.coldest.hours)} hours`}</td>
      <td>{way.cost.high > 0 ? <QuantityRange range={way.cost} kind="money" /> : 'nothing'}</td>
      <td className="long">{hardSteps[way.id] ?? ''}</td>
    </tr>
  );
}
