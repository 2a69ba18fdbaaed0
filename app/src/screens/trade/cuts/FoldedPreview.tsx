import { useRef, useState } from 'react';
import { Button } from '../../../look/Button.tsx';
import type { Face } from './foldedFaces.ts';

/** Degrees of a press of a button or key, and of a dragged px. */
const step = 15;
const perPixel = 0.6;
const tiltMost = 80;

const text = (spots: readonly (readonly [number, number])[]): string =>
  spots.map(([x, y]) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ');

const within = (tilt: number): number => Math.max(-tiltMost, Math.min(tiltMost, tilt));

type Folded = {
  readonly name: string;
  /** m: the longest way through it. */
  readonly long: number;
  /** Holes by number, in their order. */
  readonly holes: readonly string[];
  readonly faces: (turn: number, tilt: number) => readonly Face[];
};

/** A box or piece as it stands when it is folded, to be turned by finger, buttons or arrow keys. The names of its holes are in the table beside it. */
export function FoldedPreview({ name, long, holes: numbered, faces }: Folded) {
  const [{ turn, tilt }, look] = useState({ turn: 35, tilt: 25 });
  const held = useRef<{ x: number; y: number } | undefined>(undefined);
  const by = (across: number, up: number) => look((v) => ({ turn: v.turn + across, tilt: within(v.tilt + up) }));
  const reach = 50 * long + 4;
  const marks = new Map(numbered.map((id, i) => [id, i + 1]));
  const keys: Readonly<Record<string, readonly [number, number]>> = {
    ArrowLeft: [step, 0],
    ArrowRight: [-step, 0],
    ArrowUp: [0, step],
    ArrowDown: [0, -step],
  };
  return (
    <div className="folded-box">
      <svg
        viewBox={[-reach, -0.72 * reach, 2 * reach, 1.44 * reach].map((n) => n.toFixed(1)).join(' ')}
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: it is turned by the arrow keys
        tabIndex={0}
        aria-label={`“${name}” folded. Arrow keys turn it.`}
        onKeyDown={(e) => {
          const move = keys[e.key];
          if (!move) return;
          e.preventDefault();
          by(...move);
        }}
        onPointerDown={(e) => {
          held.current = { x: e.clientX, y: e.clientY };
          e.currentTarget.setPointerCapture(e.pointerId);
        }}
        onPointerMove={(e) => {
          const from = held.current;
          if (!from) return;
          held.current = { x: e.clientX, y: e.clientY };
          by(-perPixel * (e.clientX - from.x), perPixel * (e.clientY - from.y));
        }}
        onPointerUp={() => {
          held.current = undefined;
        }}
        onPointerCancel={() => {
          held.current = undefined;
        }}
      >
        {faces(turn, tilt).map(({ side, inside, corners, holes }) => (
          <g key={side}>
            <polygon points={text(corners)} className={inside ? 'folded-within' : 'folded-face'} />
            {holes.map((h) => (
              <g key={h.id}>
                <polygon points={text(h.rim)} className="folded-hole" />
                {!inside && (
                  <text
                    className="folded-number"
                    x={h.middle[0]}
                    y={h.middle[1]}
                    style={{ fontSize: `${(reach / 11).toFixed(1)}px` }}
                  >
                    {marks.get(h.id)}
                  </text>
                )}
              </g>
            ))}
          </g>
        ))}
      </svg>
      <p className="folded-turn">
        <Button onClick={() => by(step, 0)}>See more of its left</Button>
        <Button onClick={() => by(-step, 0)}>See more of its right</Button>
        <Button onClick={() => by(0, step)}>From above</Button>
        <Button onClick={() => by(0, -step)}>From below</Button>
      </p>
    </div>
  );
}
