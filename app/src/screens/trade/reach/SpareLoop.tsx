import type { TradeResults } from '@kneewall/engine';
import type { ResolvedProject } from '@kneewall/project';
import { Quantity } from '../../../quantity/Quantity.tsx';

type Loop = Extract<TradeResults['lineset']['loop'], { ok: true }>['value'];
type Room = ResolvedProject['routes']['lineset']['spare'];

const where = {
  attic: 'on the attic floor',
  behind: 'on the ground behind the unit',
  wall: 'flat under a cover on the wall',
};

/** What is left of the set as it should lie, drawn in its room where that is known. */
export function SpareLoop({ loop, room }: { loop: Loop; room: Room }) {
  const place = 'choice' in room.where ? where[room.where.choice] : where.attic;
  if (loop.turns === 0)
    return (
      <p>
        <Quantity value={loop.length} kind="length" /> are left over: too little for a loop. Let the line lie in one
        gentle bow, {place}.
      </p>
    );
  const [width, depth] = [room.width, room.depth].map((s) => ('likely' in s ? s.likely : undefined));
  const wide = Math.max(width ?? 0, loop.across);
  const deep = Math.max(depth ?? 0, loop.across);
  const per = 180 / Math.max(wide, deep);
  return (
    <div className="spare-loop">
      <svg
        viewBox={`-4 -4 ${wide * per + 8} ${deep * per + 8}`}
        width={wide * per + 8}
        height={deep * per + 8}
        aria-hidden="true"
        focusable="false"
      >
        {width !== undefined && depth !== undefined && (
          <rect width={width * per} height={depth * per} className="reach-wall" />
        )}
        {[0, 1, 2].slice(0, loop.turns).map((k) => (
          <circle
            key={k}
            cx={(wide * per) / 2 + 5 * k}
            cy={(deep * per) / 2}
            r={(loop.across * per) / 2 - 2 - 5 * (loop.turns - 1)}
            className="reach-way"
          />
        ))}
      </svg>
      <p>
        <Quantity value={loop.length} kind="length" /> are left over, {place}:{' '}
        {loop.turns === 1 ? 'one flat turn' : `${loop.turns} flat turns`},{' '}
        <Quantity value={loop.across} kind="length" /> across. Never a tight upright coil, and nothing is cut off a set
        that is filled.
      </p>
    </div>
  );
}
