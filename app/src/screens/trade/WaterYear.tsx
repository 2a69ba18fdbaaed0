import type { TradeResults } from '@kneewall/engine';
import { shortMonths } from '@kneewall/project';
import { Quantity } from '../../quantity/Quantity.tsx';

type Year = Extract<TradeResults['condensate']['waterYear'], { ok: true }>['value'];

const height = 34;

/** Water by month, as bars with their year. */
export function WaterYear({ year }: { year: Year }) {
  const most = Math.max(...year.months, 1e-9);
  return (
    <figure className="drain-water">
      <p>
        Through the year the air of the house gives <Quantity value={year.year / 1000} kind="volume" /> of water, at the
        most <Quantity value={year.hourMost / 1000} kind="volume" /> in an hour. In the heating season it gives none
        indoors; what the outdoor unit thaws off itself belongs to the line set.
      </p>
      {year.year > 0 && (
        <>
          <svg viewBox={`0 0 120 ${height + 7}`} aria-hidden="true" focusable="false">
            {year.months.map((litres, i) => (
              <g key={shortMonths[i]}>
                <rect
                  x={i * 10 + 2}
                  width="6"
                  y={height - (litres / most) * (height - 3)}
                  height={(litres / most) * (height - 3)}
                />
                <text x={i * 10 + 5} y={height + 5.5} textAnchor="middle">
                  {shortMonths[i]?.slice(0, 3)}
                </text>
              </g>
            ))}
          </svg>
          <figcaption className="field-help">
            Water by month; the highest bar is <Quantity value={most / 1000} kind="volume" />.
          </figcaption>
        </>
      )}
    </figure>
  );
}
