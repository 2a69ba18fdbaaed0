import { type DrainPicture, drainOf, drainSvg } from '@kneewall/documents';
import type { Plan, TradeResults } from '@kneewall/engine';
import { handOver } from '../../files/saveFile.ts';
import { Button } from '../../look/Button.tsx';
import { Scroll } from '../../look/Scroll.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import { useSession, useUnits } from '../../services.ts';
import './DrainSheet.css';
import { OutcomeOr } from './OutcomeOr.tsx';
import { WaterYear } from './WaterYear.tsx';

type Condensate = TradeResults['condensate'];
type Stretch = Extract<Condensate['stretches'], { ok: true }>['value'][number];

const places: Readonly<Record<Stretch['place'], string>> = {
  inside: 'Inside',
  attic: 'Attic',
  below: 'Below the floor',
  outdoors: 'Outdoors',
};

/** The whole drain: unit, second line, its way by stretch with falls and frost, and the water of the year. */
export function DrainSheet({ result, plan }: { result: Condensate; plan: Plan }) {
  const project = useSession((s) => s.project);
  const units = useUnits();
  const picture = drainOf(plan, project, units);
  return (
    <Sheet title="The drain’s way">
      <OutcomeOr outcome={result.stretches} what="The drain’s way">
        {(stretches) => (
          <>
            {picture && <DrainDrawing picture={picture} />}
            <StretchTable stretches={stretches} />
            <p>
              <Button onClick={() => handOver('drain.svg', drainSvg(plan, project, units) ?? '', 'image/svg+xml')}>
                Save the drawing of the drain
              </Button>
            </p>
          </>
        )}
      </OutcomeOr>
      <OutcomeOr outcome={result.waterYear} what="The water of a year">
        {(year) => <WaterYear year={year} />}
      </OutcomeOr>
    </Sheet>
  );
}

const pointsOf = (points: readonly (readonly [number, number])[]): string => points.map((p) => p.join(',')).join(' ');

function DrainDrawing({ picture }: { picture: DrainPicture }) {
  return (
    <figure className="drain-drawing">
      <svg
        viewBox={`0 0 ${picture.width} ${picture.height}`}
        role="img"
        aria-label="The drain from the side: the unit on its risers with trap, vent and second line; below it the drain’s way with its falls."
      >
        {picture.lines.map(({ of, points }) => (
          <polyline key={`${of} ${pointsOf(points)}`} points={pointsOf(points)} className={`drain-${of}`} />
        ))}
        {picture.names.map(({ at, text, anchor }) => (
          <text key={`${text} ${at[0]}`} x={at[0]} y={at[1]} textAnchor={anchor}>
            {text}
          </text>
        ))}
      </svg>
      <figcaption className="field-help">
        The unit is not to scale; in its way heights are drawn {Math.round(picture.stretched)} times as large as
        lengths.
      </figcaption>
    </figure>
  );
}

function StretchTable({ stretches }: { stretches: readonly Stretch[] }) {
  return (
    <Scroll label="The drain by stretch">
      <table className="table">
        <thead>
          <tr>
            {['Stretch', 'Place', 'Length', 'Loses', 'Least', 'Frost in a year', 'Longest'].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {stretches.map((s, i) => (
            <tr key={s.id}>
              <th scope="row">
                {i + 1} {s.name}
              </th>
              <td>{places[s.place]}</td>
              <td>
                <Quantity value={s.run} kind="length" />
              </td>
              <td>
                <Quantity value={s.fall} kind="length" /> {s.falls ? '' : '(too little)'}
              </td>
              <td>
                <Quantity value={s.least} kind="length" />
              </td>
              <td>{s.winter ? `${Math.round(s.winter.hours)} h` : s.place === 'inside' ? 'none' : '–'}</td>
              <td>{s.winter ? `${Math.round(s.winter.longest)} h` : '–'}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  );
}
