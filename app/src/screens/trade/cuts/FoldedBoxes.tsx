import { useState } from 'react';
import { Button } from '../../../look/Button.tsx';
import { Quantity } from '../../../quantity/Quantity.tsx';
import { FoldedPreview } from './FoldedPreview.tsx';
import { type FoldedBox, foldedFaces } from './foldedFaces.ts';

/** Every box as it stands when it is folded, one at a time, with its sizes and the names of its holes. */
export function FoldedBoxes({ boxes }: { boxes: readonly FoldedBox[] }) {
  const [id, choose] = useState(boxes[0]?.id);
  const folded = boxes.find((b) => b.id === id) ?? boxes[0];
  if (!folded) return null;
  const { inside, outside } = folded.flat;
  const sizes = [
    ['Inside', inside],
    ['Outside', outside],
  ] as const;
  return (
    <>
      {boxes.length > 1 && (
        <p className="cut-pieces">
          {boxes.map((b) => (
            <Button key={b.id} aria-pressed={b === folded} onClick={() => choose(b.id)}>
              {b.name}
            </Button>
          ))}
        </p>
      )}
      <FoldedPreview
        key={folded.id}
        name={folded.name}
        long={Math.hypot(outside.width, outside.height, outside.length)}
        holes={folded.holes.map((h) => h.id)}
        faces={(turn, tilt) => foldedFaces(folded, turn, tilt)}
      />
      {sizes.map(([name, { width, height, length }]) => (
        <p key={name}>
          {name}: <Quantity value={width} kind="length" /> wide, <Quantity value={height} kind="length" /> high,{' '}
          <Quantity value={length} kind="length" /> long
        </p>
      ))}
      <p>
        Board <Quantity value={folded.box.thickness} kind="length" /> thick
        {folded.thicknessFrom === 'insulation' ? ', worked out from the insulation entered for it' : ', as entered'}.
        The near end is {folded.box.caps.start ? 'closed' : 'open towards the unit'}, the far end{' '}
        {folded.box.caps.end ? 'closed by a cap' : 'open'}.
      </p>
      <ol>
        {folded.holes.map((h, i) => (
          <li key={h.id}>
            {i + 1} {h.name}
            {h.short ? ': nearer than 18 in to the unit' : ''}
          </li>
        ))}
      </ol>
    </>
  );
}
