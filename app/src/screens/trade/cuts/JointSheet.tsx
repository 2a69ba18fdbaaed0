import type { TradeResults } from '@kneewall/engine';
import { Quantity } from '../../../quantity/Quantity.tsx';
import { printRoute } from '../../../route/route.ts';
import { FoldedPreview } from './FoldedPreview.tsx';
import { type JointPiece, jointFaces, jointReach } from './jointFaces.ts';

type Joint = Extract<TradeResults['materials']['cut'], { ok: true }>['value']['joints'][number];

/** How supply and return join the unit: straight, by a piece that is shown folded, or not known yet. */
export function JointSheet({ joints }: { joints: readonly Joint[] }) {
  return (
    <>
      {joints.map((joint) => (
        <section key={joint.side}>
          <h3>
            {joint.side === 'supply' ? 'Supply' : 'Return'}: “{joint.name}”
          </h3>
          {joint.state === 'piece' ? <Piece joint={joint} /> : <Plain joint={joint} />}
        </section>
      ))}
    </>
  );
}

function Plain({ joint }: { joint: Exclude<Joint, JointPiece> }) {
  if (joint.state === 'straight')
    return <p>As large as the unit’s opening and in line with it: they join straight, no piece goes between.</p>;
  if (joint.state === 'shared')
    return (
      <p>
        {joint.ducts} ducts leave this side together, by a box of {joint.of === 'board' ? 'board' : 'sheet metal'} as
        large inside as the opening, <Quantity value={joint.length} kind="length" /> long and closed at its far end. It
        lies on the cut sheets with a hole for each. Its leaks and heat count once it is entered as a duct of its own.
      </p>
    );
  return (
    <p>
      The unit’s opening is not entered.{' '}
      <a href={printRoute({ screen: 'trade', trade: 'equipment', field: joint.missing })}>Enter its size</a>: from the
      drawing in the data sheet, or measured inside its flange.
    </p>
  );
}

function Piece({ joint }: { joint: JointPiece }) {
  const { opening, piece } = joint;
  const { end, offset } = piece;
  return (
    <>
      <FoldedPreview
        name={`Unit to ${joint.name}`}
        long={jointReach(joint)}
        holes={[]}
        faces={(turn, tilt) => jointFaces(joint, turn, tilt)}
      />
      <p>
        At the unit: <Quantity value={opening.width} kind="length" /> wide,{' '}
        <Quantity value={opening.height} kind="length" /> high
      </p>
      <p>
        At the duct:{' '}
        {end.kind === 'round' ? (
          <>
            <Quantity value={end.diameter} kind="length" /> round
          </>
        ) : (
          <>
            <Quantity value={end.width} kind="length" /> wide, <Quantity value={end.height} kind="length" /> high
          </>
        )}
      </p>
      <p>
        <Quantity value={piece.length} kind="length" /> long
        {piece.lengthFrom === 'slopes' ? ', worked out from its slopes' : ', as entered'}; of{' '}
        {piece.of === 'board' ? 'duct board, four sides' : 'sheet metal, in halves'}. <Lying offset={offset} />
      </p>
      <p className="field-help">
        Inside sizes.{' '}
        <a
          href={printRoute({
            screen: 'trade',
            trade: 'air',
            field: `routes.ducts.handler.${joint.side === 'supply' ? 'supplyJoint' : 'returnJoint'}`,
          })}
        >
          Offset, length and material of this piece
        </a>
      </p>
    </>
  );
}

/** How the duct's middle lies against the opening's. */
function Lying({ offset: [right, up] }: { offset: JointPiece['piece']['offset'] }) {
  const ways = [
    { by: right, word: right < 0 ? 'to the left of' : 'to the right of' },
    { by: up, word: up < 0 ? 'below' : 'above' },
  ].filter(({ by }) => Math.abs(by) > 5e-4);
  if (ways.length === 0) return 'In line.';
  return (
    <>
      The duct’s middle lies{' '}
      {ways.map(({ by, word }, i) => (
        <span key={word}>
          {i > 0 ? 'and ' : ''}
          <Quantity value={Math.abs(by)} kind="length" /> {word}{' '}
        </span>
      ))}
      the opening’s, seen from the unit.
    </>
  );
}
