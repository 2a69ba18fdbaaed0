import { Button } from '../look/Button.tsx';
import { Quantity } from '../quantity/Quantity.tsx';
import { useUnits } from '../services.ts';
import { gridStep } from './snap.ts';

type Props = {
  readonly adding: boolean;
  /** Too few corners yet: the board takes them without being asked. */
  readonly begun: boolean;
  readonly barred: boolean;
  readonly times: number;
  readonly ask: () => void;
  readonly look: (times: number) => void;
};

const closest = 8;

/** What a touch of the board does, and how close it is seen. */
export function BoardButtons({ adding, begun, barred, times, ask, look }: Props) {
  const step = gridStep[useUnits()];
  return (
    <>
      <div className="board-buttons">
        <Button aria-pressed={adding} disabled={barred || begun} onClick={ask}>
          Add corners by touch
        </Button>
        <Button disabled={times >= closest} onClick={() => look(times * 2)}>
          Closer
        </Button>
        <Button disabled={times <= 1} onClick={() => look(times / 2)}>
          Farther
        </Button>
      </div>
      <p className="field-help">
        {adding ? 'Touch the board where the next corner is. ' : 'Drag a corner; by touch, tap it first. '}
        Arrow keys move the corner in focus by <Quantity value={step} kind="length" />, Delete removes it, Escape gives
        up. Corners stand on steps of that size, square with the next, or on the end of another section.
      </p>
    </>
  );
}
