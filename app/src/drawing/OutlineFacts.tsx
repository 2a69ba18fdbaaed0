import { areaOfOutline, crossingOf, type Entered } from '@kneewall/project';
import { useField } from '../form/useField.ts';
import { Button } from '../look/Button.tsx';
import { Quantity } from '../quantity/Quantity.tsx';
import { spotOf } from './corners.ts';
import type { DrawnPoints } from './usePoints.ts';

/** An outline's own area beside the one entered, and what keeps it from counting. */
export function OutlineFacts({ path, drawn }: { path: readonly string[]; drawn: DrawnPoints }) {
  const entered = useField([...path.slice(0, -1), 'floorArea']).value as Entered | undefined;
  const corners = drawn.points.map(spotOf);
  const likely = typeof entered?.value === 'object' ? entered.value.likely : entered?.value;
  if (corners.length === 0) return <Rectangle drawn={drawn} area={likely} />;
  if (corners.length < 3) return <p>It needs three corners at least.</p>;
  const crossing = crossingOf(corners);
  if (crossing)
    return (
      <p className="field-problem" role="status">
        The side from corner {crossing.sides[0] + 1} meets the side from corner {crossing.sides[1] + 1}. Until that is
        mended the outline does not count.
      </p>
    );
  return (
    <p>
      Holds{' '}
      <strong>
        <Quantity value={areaOfOutline(corners)} kind="area" />
      </strong>
      , entered {likely === undefined ? 'no floor area' : <Quantity value={likely} kind="area" />}. The outline counts.
    </p>
  );
}

/** A square of the entered area to begin with: quicker to push into shape than to draw from nothing. */
function Rectangle({ drawn, area }: { drawn: DrawnPoints; area: number | undefined }) {
  const { step, around, barred, replace } = drawn;
  const side = Math.max(1, Math.round(Math.sqrt(area ?? 12) / step)) * step;
  const [x = 0, y = 0] = around.start;
  const square = [
    [x, y],
    [x + side, y],
    [x + side, y + side],
    [x, y + side],
  ];
  return (
    <Button disabled={barred} onClick={() => replace(square.map((c) => c.map((v) => Math.round(v * 1e4) / 1e4)))}>
      Begin with a square of <Quantity value={side} kind="length" />
    </Button>
  );
}
