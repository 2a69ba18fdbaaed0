import type { Asked, TradeResults, Wall } from '@kneewall/engine';
import { useId } from 'react';
import { Quantity } from '../../../quantity/Quantity.tsx';
import { PlaceAnswer } from './PlaceAnswer.tsx';
import { ReachDrawing } from './ReachDrawing.tsx';
import { ReachKey } from './ReachKey.tsx';
import type { On } from './unitMove.ts';
import { useUnitMove } from './useUnitMove.ts';
import './Reach.css';

type Maps = Extract<TradeResults['lineset']['maps'], { ok: true }>['value'];

/** Where the outdoor unit's corner may lie on one wall and before it, which line set reaches there, and the unit to move. */
export function ReachMap({
  wall,
  maps,
  asked,
  meant,
  names,
}: {
  wall: Wall;
  maps: Maps;
  asked: Asked;
  meant: On | undefined;
  /** Of what is on the wall and on the ground, in the order of the wall. */
  names: readonly string[];
}) {
  const id = useId();
  const move = useUnitMove(wall, asked, meant);
  const { stock, unit } = asked;
  const reached = stock
    .map((_, k) => k)
    .filter((k) => maps.some((map) => map.rows.some((row) => row.some((r) => r.stock === k))));
  const lowest = maps.find((map) => map.stands === 'wall')?.best;
  return (
    <figure className="reach">
      <figcaption>
        {wall.name} from outside{wall.ground.depth > 0 && ', the ground before it folded down'}: where the unit’s corner
        may lie.{' '}
        {move.place
          ? 'Drag the unit, press arrow keys on it, or touch another spot.'
          : 'Touch a spot to move the unit to this wall.'}
      </figcaption>
      {move.place && move.answer && <PlaceAnswer place={move.place} answer={move.answer} asked={asked} />}
      <ReachDrawing id={id} maps={maps} wall={wall} unit={unit} reached={reached} move={move} />
      <ReachKey
        id={id}
        stock={stock}
        reached={reached}
        names={names}
        snow={unit.baseLeast}
        unit={move.place !== undefined}
      />
      {lowest ? (
        <p>
          The shortest set that reaches a place on the wall is the{' '}
          <Quantity value={stock[lowest.stock]?.length ?? 0} kind="length" /> one: lowest with the corner{' '}
          <Quantity value={lowest.x} kind="length" /> from the left end and <Quantity value={lowest.z} kind="length" />{' '}
          above the ground.
        </p>
      ) : (
        <p>No set for sale reaches a place on this wall that is free, above the snow, and can be lifted to.</p>
      )}
    </figure>
  );
}
