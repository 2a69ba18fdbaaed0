import type { TradeResults } from '@kneewall/engine';
import { Scroll } from '../../look/Scroll.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import { AtticHoursSheet } from './AtticHoursSheet.tsx';
import { HatchDrawing } from './HatchDrawing.tsx';
import { OutcomeOr } from './OutcomeOr.tsx';

type Access = TradeResults['access'];
type Way = Extract<Access['ways'], { ok: true }>['value'][number];

const pieceWords: Readonly<Record<Way['piece'], string>> = {
  handler: 'Air handler',
  handlerCrated: 'Air handler, crated',
  outdoorUnit: 'Outdoor unit',
};

/** Whether the boxes pass their openings: the chosen unit drawn in the tightest one, all units in a table. */
export default function AccessResultSheets({ result }: { result: Access }) {
  return (
    <>
      <Sheet title="Ways in">
        <OutcomeOr outcome={result.ways} what="Whether the boxes pass">
          {(ways) => (
            <>
              <Drawn ways={ways.filter((w) => result.chosen.ok && w.candidate === result.chosen.value)} />
              <WaysTable ways={ways} />
            </>
          )}
        </OutcomeOr>
      </Sheet>
      <AtticHoursSheet hours={result.heatHours} />
    </>
  );
}

/** The tightest way of the bare handler, to scale. */
function Drawn({ ways }: { ways: readonly Way[] }) {
  const [tightest] = ways
    .filter((w) => w.piece !== 'handlerCrated')
    .flatMap((w) => (w.passing.ok ? [{ way: w, passing: w.passing.value }] : []))
    .toSorted((x, y) => x.passing.spare.likely - y.passing.spare.likely);
  if (!tightest) return null;
  const { way, passing } = tightest;
  const passes = passing.spare.likely >= 0;
  const piece = pieceWords[way.piece].toLowerCase();
  return (
    <figure className="hatch">
      <p className="lead">
        {way.name}: the {piece} {passes ? 'passes' : 'does not pass'}
        {passes ? ', with ' : '; '}
        <Quantity value={Math.abs(passing.spare.likely)} kind="length" /> {passes ? 'to spare.' : 'are lacking.'}
      </p>
      {way.kind !== 'stair' && <HatchDrawing passing={passing} />}
      <figcaption>
        {way.kind !== 'stair' &&
          'The opening as a line, the end of the box that goes first as a filled shape, to scale. '}
        {!passes && (
          <>
            An opening of <Quantity value={passing.smallest[0]} kind="length" /> by{' '}
            <Quantity value={passing.smallest[1]} kind="length" /> would do.
          </>
        )}
      </figcaption>
    </figure>
  );
}

const answer = ({ passing }: Way): string =>
  !passing.ok ? 'not known' : passing.value.spare.likely < 0 ? 'no' : passing.value.spare.low < 0 ? 'barely' : 'yes';

function WaysTable({ ways }: { ways: readonly Way[] }) {
  return (
    <Scroll label="Every unit at every way in">
      <table className="table">
        <thead>
          <tr>
            <th scope="col">Unit</th>
            <th scope="col">Piece</th>
            <th scope="col">Way in</th>
            <th scope="col">Passes</th>
            <th scope="col">To spare</th>
          </tr>
        </thead>
        <tbody>
          {ways.map((w) => (
            <tr key={`${w.candidate} ${w.passage} ${w.piece}`}>
              <th scope="row">{w.unit}</th>
              <td>{pieceWords[w.piece]}</td>
              <td>{w.name}</td>
              <td>{answer(w)}</td>
              <td>{w.passing.ok ? <Quantity value={w.passing.value.spare.likely} kind="length" /> : '–'}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  );
}
