import { elevationSvg } from '@kneewall/documents';
import type { TradeResults } from '@kneewall/engine';
import { inOrder, type ResolvedProject, resolveProject } from '@kneewall/project';
import { handOver } from '../../files/saveFile.ts';
import { Button } from '../../look/Button.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import { usePlanner, useSession, useUnits } from '../../services.ts';
import { OutcomeOr } from './OutcomeOr.tsx';
import { GoodPlaces } from './reach/GoodPlaces.tsx';
import { InsidePlan } from './reach/InsidePlan.tsx';
import { ReachMap } from './reach/ReachMap.tsx';
import { SpareLoop } from './reach/SpareLoop.tsx';
import type { On } from './reach/unitMove.ts';

type Lineset = TradeResults['lineset'];
type Input = ResolvedProject['routes']['lineset'];

/** Where the outdoor unit may be, by the line sets for sale; what the place meant takes, and which would be better. */
export function LinesetResultSheets({ result }: { result: Lineset }) {
  const project = useSession((s) => s.project);
  const { lineset } = resolveProject(project).routes;
  const { walls, maps, asked, places, loop, insides } = result;
  const names = Object.fromEntries(inOrder(lineset.walls).map(([id, w]) => [id, w.name ?? id]));
  return (
    <>
      <Sheet title="Where the line reaches">
        <OutcomeOr outcome={result.needed} what="The length of the line">
          {(needed) => (
            <p className="lead">
              The line takes <Quantity value={needed.likely} kind="length" />, up to{' '}
              <Quantity value={needed.high} kind="length" />, spare counted
              <SetNamed set={result.set} />.
            </p>
          )}
        </OutcomeOr>
        <Overridden result={result} input={lineset} />
        <OutcomeOr outcome={maps} what="The map of the wall">
          {(found) =>
            (walls.ok ? walls.value : []).map(
              (wall) =>
                asked.ok && (
                  <ReachMap
                    key={wall.id}
                    wall={wall}
                    maps={found.filter((map) => map.wall === wall.id)}
                    asked={asked.value}
                    meant={meantOf(lineset)}
                    names={thingsOn(lineset, wall.id)}
                  />
                ),
            )
          }
        </OutcomeOr>
        <SaveElevation />
      </Sheet>
      {places.ok && asked.ok && (
        <Sheet title="The best places">
          <GoodPlaces places={places.value} asked={asked.value} names={names} />
        </Sheet>
      )}
      {(insides.length > 0 || loop.ok) && (
        <Sheet title="Inside, and what is left over">
          {insides.map(({ wall, way }) => (
            <OutcomeOr key={wall} outcome={way} what={`The way inside to ${names[wall] ?? wall}`}>
              {(found) => <InsidePlan way={found} indoor={lineset.indoor} name={names[wall] ?? wall} />}
            </OutcomeOr>
          ))}
          {loop.ok && <SpareLoop loop={loop.value} room={lineset.spare} />}
        </Sheet>
      )}
    </>
  );
}

function SetNamed({ set }: { set: Lineset['set'] }) {
  if (!set.ok) return null;
  return (
    <>
      ; the <Quantity value={set.value.length} kind="length" /> set reaches
    </>
  );
}

/** Where a length was entered and a place is drawn, which of them counts. */
function Overridden({ result, input }: { result: Lineset; input: Input }) {
  if ('missing' in input.run || !result.spot.ok || !result.needed.ok) return null;
  return (
    <p>
      This is by the place drawn on the wall. The <Quantity value={input.run.likely} kind="length" /> entered as the
      length of the line does not count beside it.
    </p>
  );
}

/** The place that is entered, where all of it is. */
function meantOf({ place: { wall, x, z, out, stands } }: Input): On | undefined {
  if (wall === undefined || 'missing' in x || 'missing' in z || 'missing' in out || 'missing' in stands)
    return undefined;
  return { wall, stands: stands.choice, x: x.likely, z: z.likely, out: out.likely };
}

/** Names of what is on a wall and, where all of its measures are known, on the ground before it. */
function thingsOn({ walls }: Input, id: string): string[] {
  const wall = walls[id];
  if (!wall) return [];
  const whole = inOrder(wall.ground.things).filter(([, t]) =>
    [t.x, t.out, t.width, t.depth].every((q) => 'likely' in q),
  );
  return [...inOrder(wall.obstacles), ...whole].map(([key, thing]) => thing.name ?? key);
}

function SaveElevation() {
  const project = useSession((s) => s.project);
  const plan = usePlanner((p) => p.plan);
  const units = useUnits();
  const svg = plan ? elevationSvg(plan, project, units) : undefined;
  if (svg === undefined) return null;
  return (
    <p>
      <Button onClick={() => handOver('wall.svg', svg, 'image/svg+xml')}>Save the wall as a drawing</Button>
    </p>
  );
}
