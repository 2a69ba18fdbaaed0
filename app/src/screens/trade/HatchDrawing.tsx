import type { TradeResults } from '@kneewall/engine';
import './HatchDrawing.css';

type Way = Extract<TradeResults['access']['ways'], { ok: true }>['value'][number];
type Passing = Extract<Way['passing'], { ok: true }>['value'];

/** Degrees by which a face too long for the opening is turned: where it just fits lengthwise. */
function turnOf(p: number, q: number, a: number): number {
  // p cos t + q sin t = a
  const reach = Math.hypot(p, q);
  return ((Math.acos(Math.min(1, a / reach)) + Math.atan2(q, p)) * 180) / Math.PI;
}

/** The opening and the face of the box that goes first, to one scale, in cm. */
export function HatchDrawing({ passing }: { passing: Passing }) {
  const { opening, pose, spare } = passing;
  const [a, b] = [100 * Math.max(...opening), 100 * Math.min(...opening)];
  const [p, q] = [100 * Math.max(...pose.face), 100 * Math.min(...pose.face)];
  const half = Math.max(a, b, p, q) / 2 + 6;
  const tall = Math.max(b, q, pose.through === 'turned' ? b : 0) / 2 + 6;
  const turn = pose.through === 'turned' ? turnOf(p, q, a) : 0;
  return (
    <svg
      className="hatch-drawing"
      viewBox={`${-half} ${-tall} ${2 * half} ${2 * tall}`}
      role="img"
      aria-label={`The opening with the end of the box in it: it ${spare.likely >= 0 ? 'passes' : 'does not pass'}.`}
    >
      <rect
        x={-p / 2}
        y={-q / 2}
        width={p}
        height={q}
        transform={`rotate(${turn})`}
        className={spare.likely >= 0 ? 'hatch-face' : 'hatch-face hatch-no'}
      />
      <rect x={-a / 2} y={-b / 2} width={a} height={b} className="hatch-opening" />
    </svg>
  );
}
