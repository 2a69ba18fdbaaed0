import type { TradeResults } from '@kneewall/engine';
import { resolveProject } from '@kneewall/project';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import { usePlanner, useSession } from '../../services.ts';
import { OutcomeOr } from './OutcomeOr.tsx';
import { ReachMap } from './reach/ReachMap.tsx';

type Lineset = TradeResults['lineset'];

/** Where the outdoor unit may hang, by the line sets for sale; what the place meant takes. */
export function LinesetResultSheets({ result }: { result: Lineset }) {
  const project = useSession((s) => s.project);
  const chosen = usePlanner((p) => p.plan?.trades.equipment?.chosen);
  const { routes, candidates } = resolveProject(project);
  const outdoor = chosen?.ok ? candidates[chosen.value]?.outdoorUnit : undefined;
  return (
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
      <OutcomeOr outcome={result.maps} what="The map of the wall">
        {(maps) =>
          maps.map((map) => (
            <ReachMap key={map.wall} map={map} result={result} input={routes.lineset} outdoor={outdoor} />
          ))
        }
      </OutcomeOr>
    </Sheet>
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
