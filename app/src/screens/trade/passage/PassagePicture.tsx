import type { TradeResults } from '@kneewall/engine';
import { useEffect, useId, useState } from 'react';
import { Button } from '../../../look/Button.tsx';
import { Quantity } from '../../../quantity/Quantity.tsx';
import { type Pose, poseOn } from './poseOn.ts';
import './PassagePicture.css';

type Way = Extract<TradeResults['access']['ways'], { ok: true }>['value'][number];
export type PlannedStage = Extract<Way['planned'], { ok: true }>['value']['stages'][number];

const viewWords: Readonly<Record<PlannedStage['view'], string>> = {
  hatch: 'from the side',
  flight: 'up the flight, from the side',
  plan: 'from above',
};
const seconds = 6;
/** A step of the scrubber by keys. */
const step = 1;

/** cm with y upward made downward. */
const flat = ([x, y]: readonly [number, number]): string => `${(100 * x).toFixed(1)},${(-100 * y).toFixed(1)}`;

/** What the path needs to be seen, cm, the piece's reach round it. */
function boxOf({ path, piece }: PlannedStage): readonly [number, number, number, number] {
  const reach = 50 * Math.hypot(...piece) + 12;
  const [xs, ys] = [0, 1].map((k) => path.filter((_, i) => i % 3 === k).map((v) => (k === 0 ? 100 : -100) * v)) as [
    number[],
    number[],
  ];
  const [x0, x1, y0, y1] = [
    Math.min(...xs) - reach,
    Math.max(...xs) + reach,
    Math.min(...ys) - reach,
    Math.max(...ys) + reach,
  ];
  return [x0, y0, x1 - x0, y1 - y0];
}

/** A piece on its way through one plane: where it is tightest, and the whole way under a scrubber or played. */
export function PassagePicture({ stage, passes, name }: { stage: PlannedStage; passes: boolean; name: string }) {
  const [share, setShare] = useState(Math.round(100 * stage.tightest[3]));
  const playing = usePlaying(setShare);
  const id = useId();
  const reach = Math.hypot(...stage.piece) / 2;
  const [x, y, turn, , gap] = stage.tightest;
  const now = poseOn(stage.path, reach, share / 100);
  return (
    <div className="passage">
      <svg
        className="passage-drawing"
        viewBox={boxOf(stage)
          .map((n) => n.toFixed(1))
          .join(' ')}
        role="img"
        aria-label={`${name}, ${viewWords[stage.view]}: ${passes ? 'the way it goes and its tightest place' : 'where it stops'}.`}
      >
        {stage.outlines.map((o) => (
          <polygon key={o.map(flat).join(' ')} points={o.map(flat).join(' ')} className="passage-wall" />
        ))}
        <polyline points={centres(stage.path)} className="passage-way" />
        <Box pose={{ x, y, turn }} piece={stage.piece} kind="passage-tightest" />
        <Box pose={now} piece={stage.piece} kind={passes ? 'passage-piece' : 'passage-piece passage-no'} />
      </svg>
      <p className="passage-words">
        {passes ? 'Tightest (dashed): ' : 'It stops (dashed): '}
        <Quantity value={Math.abs(gap)} kind="length" /> {gap >= 0 ? 'clear there.' : 'too much there.'} Drawn{' '}
        {viewWords[stage.view]}
        {stage.tilted === undefined ? '' : ', carried with one end up'}.
      </p>
      <div className="passage-controls">
        {playing.offered && <Button onClick={playing.toggle}>{playing.on ? 'Pause' : 'Play'}</Button>}
        <label htmlFor={id}>Along its way</label>
        <input
          id={id}
          type="range"
          min={0}
          max={100}
          step={step}
          value={share}
          aria-valuetext={`${Math.round(share)} %`}
          onChange={(e) => {
            playing.stop();
            setShare(Number(e.currentTarget.value));
          }}
        />
      </div>
    </div>
  );
}

function centres(path: readonly number[]): string {
  const points: string[] = [];
  for (let i = 0; i + 2 < path.length; i += 3) points.push(flat([path[i] ?? 0, path[i + 1] ?? 0]));
  return points.join(' ');
}

function Box({ pose, piece: [long, wide], kind }: { pose: Pose; piece: readonly [number, number]; kind: string }) {
  const turn = (-pose.turn * 180) / Math.PI;
  return (
    <rect
      className={kind}
      x={-50 * long}
      y={-50 * wide}
      width={100 * long}
      height={100 * wide}
      transform={`translate(${(100 * pose.x).toFixed(2)} ${(-100 * pose.y).toFixed(2)}) rotate(${turn.toFixed(2)})`}
    />
  );
}

/** Moves the scrubber over some seconds; not offered where less motion is asked for. */
function usePlaying(set: (next: (share: number) => number) => void) {
  const [on, setOn] = useState(false);
  const offered = !window.matchMedia('(prefers-reduced-motion: reduce)').matches;
  useEffect(() => {
    if (!on) return;
    let last = performance.now();
    let frame = requestAnimationFrame(function move(time) {
      const passed = Math.max(0, time - last) / (1000 * seconds);
      last = time;
      set((share) => (share >= 100 ? 0 : Math.min(100, share + 100 * passed)));
      frame = requestAnimationFrame(move);
    });
    return () => cancelAnimationFrame(frame);
  }, [on, set]);
  return { on, offered, toggle: () => setOn(!on), stop: () => setOn(false) };
}
