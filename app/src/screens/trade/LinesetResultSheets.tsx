import type { TradeResults } from '@kneewall/engine';
import { type ResolvedProject, resolveProject } from '@kneewall/project';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import { useSession } from '../../services.ts';
import { OutcomeOr } from './OutcomeOr.tsx';
import { ReachDrawing } from './ReachDrawing.tsx';

type Lineset = TradeResults['lineset'];
type Walls = ResolvedProject['routes']['lineset']['walls'];

/** Where the outdoor unit may hang, by the line sets for sale; what the place meant takes. */
export function LinesetResultSheets({ result }: { result: Lineset }) {
  const project = useSession((s) => s.project);
  const { lineset } = resolveProject(project).routes;
  return (
    <Sheet title="Where the line reaches">
      <OutcomeOr outcome={result.needed} what="The length of the line">
        {(needed) => (
          <p className="lead">
            The line takes <Quantity value={needed.likely} kind="length" />, up to{' '}
            <Quantity value={needed.high} kind="length" />, spare counted.
          </p>
        )}
      </OutcomeOr>
      <OutcomeOr outcome={result.maps} what="The map of the wall">
        {(maps) =>
          maps.map((map) => (
            <WallMap key={map.wall} map={map} stock={result.stock} walls={lineset.walls} place={lineset.place} />
          ))
        }
      </OutcomeOr>
    </Sheet>
  );
}

type Maps = Extract<Lineset['maps'], { ok: true }>['value'];

function WallMap({
  map,
  stock,
  walls,
  place,
}: {
  map: Maps[number];
  stock: Lineset['stock'];
  walls: Walls;
  place: ResolvedProject['routes']['lineset']['place'];
}) {
  const wall = walls[map.wall];
  if (!wall) return null;
  const reached = stock.filter((_, k) => map.rows.some((row) => row.some((r) => r.stock === k)));
  return (
    <figure className="reach">
      <figcaption>{wall.name ?? map.wall}, seen from outside. Where the unit’s lower left corner may lie:</figcaption>
      <ReachDrawing map={map} wall={wall} {...(place.wall === map.wall ? { place } : {})} />
      <ul className="reach-key">
        {reached.map((s) => (
          <li key={s.id}>
            <span className={`reach-patch reach-${stock.indexOf(s) % 4}`} aria-hidden="true" />
            the <Quantity value={s.length} kind="length" /> set reaches
          </li>
        ))}
      </ul>
      {map.best ? (
        <p>
          The shortest set that reaches anywhere is the{' '}
          <Quantity value={stock[map.best.stock]?.length ?? 0} kind="length" /> one: lowest with the corner{' '}
          <Quantity value={map.best.x} kind="length" /> from the left end and{' '}
          <Quantity value={map.best.z} kind="length" /> above the ground.
        </p>
      ) : (
        <p>No set for sale reaches a place on this wall that is free and above the snow.</p>
      )}
    </figure>
  );
}
