import { printQuantity } from '@kneewall/project';
import { useUnits } from '../../../services.ts';

/** Lengths a scale bar may stand for: whole feet, or whole metres. */
const lengths = { us: [20, 10, 5].map((feet) => feet * 0.3048), si: [5, 2, 1] } as const;

type Props = {
  readonly width: number;
  readonly height: number;
  readonly perMetre: number;
  readonly north: number | undefined;
};

/** A scale bar, and an arrow to the north where it is known, in the picture's lower corners. */
export function Scale({ width, height, perMetre, north }: Props) {
  const units = useUnits();
  const metres = lengths[units].find((m) => m * perMetre < width / 3) ?? lengths[units][2];
  const y = height - 10;
  return (
    <g className="duct-scale">
      <path d={`M12 ${y - 4} V${y} H${12 + metres * perMetre} V${y - 4}`} />
      <text x={18 + metres * perMetre} y={y}>
        {printQuantity(metres, 'length', units)}
      </text>
      {north !== undefined && (
        <g transform={`translate(${width - 16} ${height - 16}) rotate(${-north})`}>
          <path className="duct-north" d="M0 -11 L5 8 L0 4 L-5 8 Z" />
        </g>
      )}
    </g>
  );
}
