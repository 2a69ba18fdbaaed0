import type { TrapPicture } from '@kneewall/documents';
import { printQuantity } from '@kneewall/project';
import { useUnits } from '../../services.ts';
import './TrapDrawing.css';

const pointsOf = (points: readonly (readonly [number, number])[]): string => points.map((p) => p.join(',')).join(' ');

/** mm kept free at the left for the words of the measures, whose letters are larger here than on paper. */
const forWords = 20;

/** The trap from the side, drawn in mm, with the measures it is built by. */
export function TrapDrawing({ picture, inner, outer }: { picture: TrapPicture; inner: number; outer: number }) {
  const units = useUnits();
  const { left, right, top, bottom } = picture.box;
  return (
    <svg
      className="trap-drawing"
      viewBox={`${left - forWords} ${top} ${right - left + forWords} ${bottom - top}`}
      role="img"
      aria-label="The trap from the side: down from the cabinet, across under standing water, up to a lower outlet, then an open vent and the drain."
    >
      <polyline points={pointsOf(picture.cabinet)} className="trap-casing" />
      {picture.pipe.map((p) => (
        <polyline key={pointsOf(p)} points={pointsOf(p)} className="trap-pipe" strokeWidth={outer} />
      ))}
      {picture.bore.map((p) => (
        <polyline key={pointsOf(p)} points={pointsOf(p)} className="trap-bore" strokeWidth={inner} />
      ))}
      <polygon points={pointsOf(picture.water)} className="trap-water" />
      {picture.measures.map(({ id, from, to, at, words }) => (
        <g key={id}>
          <path d={`M${at - 2} ${from}h14M${at} ${from}V${to}M${at - 2} ${to}h14`} className="trap-measure" />
          <text x={words} y={(from + to) / 2 + 3} textAnchor="end">
            {id} {printQuantity((to - from) / 1000, 'length', units)}
          </text>
        </g>
      ))}
      {picture.names.map(({ at, text, anchor }) => (
        <text key={`${text} ${at[0]}`} x={at[0]} y={at[1]} textAnchor={anchor}>
          {text}
        </text>
      ))}
    </svg>
  );
}
