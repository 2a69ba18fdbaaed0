import type { TradeResults } from '@kneewall/engine';
import { Quantity } from '../../../quantity/Quantity.tsx';
import { printRoute } from '../../../route/route.ts';
import { FoldedPreview } from './FoldedPreview.tsx';
import { jointFaces, jointReach } from './jointFaces.ts';

type Made = Extract<TradeResults['materials']['cut'], { ok: true }>['value']['made'][number];
type Reducer = Extract<Made, { what: 'reducer' }>;

/** Every cap and reducer that is cut from sheet metal: its sizes, and a reducer as it stands. */
export const MadeSheet = ({ made }: { made: readonly Made[] }) =>
  made.map((one) => (
    <section key={one.id}>
      <h3>{one.name}</h3>
      {one.what === 'cap' && (
        <p>
          Goes over a duct of <Quantity value={one.diameter} kind="length" /> inside: a face with tabs all round, bent
          up along straight lines.
        </p>
      )}
      {one.what === 'unknown' && (
        <p>
          The sizes of its two ducts are not entered.{' '}
          <a href={printRoute({ screen: 'trade', trade: 'air', field: one.missing })}>Enter what is missing</a>.
        </p>
      )}
      {one.what === 'reducer' && <Piece one={one} />}
    </section>
  ));

function Piece({ one }: { one: Reducer }) {
  return (
    <>
      <FoldedPreview
        name={one.name}
        long={jointReach({ piece: one })}
        holes={[]}
        faces={(turn, tilt) => jointFaces({ piece: one }, turn, tilt)}
      />
      <p>
        From <End end={one.start} /> to <End end={one.end} />, <Quantity value={one.length} kind="length" /> long
        {one.lengthFrom === 'slopes' ? ', worked out from its slopes' : ', as entered'}.
      </p>
      {one.arcs && (
        <p>
          About one centre: an arc of <Quantity value={one.arcs.outer} kind="length" />, one of{' '}
          <Quantity value={one.arcs.inner} kind="length" />, over <Quantity value={one.arcs.angle} kind="angle" />.
        </p>
      )}
    </>
  );
}

const End = ({ end }: { end: Reducer['end'] }) =>
  end.kind === 'round' ? (
    <>
      <Quantity value={end.diameter} kind="length" /> round
    </>
  ) : (
    <>
      <Quantity value={end.width} kind="length" /> by <Quantity value={end.height} kind="length" />
    </>
  );
