import { pathLabel } from '@kneewall/project';
import { StatusMark } from '../../findings/StatusMark.tsx';
import type { Moved } from '../../planner/moved.ts';
import { Quantity } from '../../quantity/Quantity.tsx';
import { goTo, useRoute } from '../../route/route.ts';
import { usePlanner, useSession } from '../../services.ts';
import './MovedSheet.css';

const inSight = 6;

/** After a change: what moved, from what to what, because of which change. */
export function MovedSheet() {
  const moved = usePlanner((p) => p.moved);
  const by = usePlanner((p) => p.movedBy);
  const project = useSession((s) => s.project);
  if (!by) return null;
  const name = pathLabel(by, project);
  const ranked = moved.toSorted((a, b) => weight(b) - weight(a));
  return (
    <section className="moved" aria-labelledby="moved-title">
      <h2 id="moved-title">Since the last change: {name}</h2>
      {moved.length === 0 && <p>Nothing moved.</p>}
      <ul>
        {ranked.slice(0, inSight).map((m) => (
          <li key={m.id}>
            <MovedLine moved={m} />
          </li>
        ))}
      </ul>
      {ranked.length > inSight && (
        <details className="fold">
          <summary>
            <span className="fold-title">{ranked.length - inSight} more moved</span>
          </summary>
          <ul>
            {ranked.slice(inSight).map((m) => (
              <li key={m.id}>
                <MovedLine moved={m} />
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}

/** Another status weighs more than another number. */
const weight = ({ before, after }: Moved): number => (before?.status === after?.status ? 0 : 1);

function MovedLine({ moved: { id, before, after } }: { moved: Moved }) {
  const route = useRoute();
  return (
    <button type="button" className="moved-line" onClick={() => goTo({ ...route, finding: id })} disabled={!after}>
      <span className="moved-what">{(after ?? before)?.what}</span>
      <span className="moved-from">
        <Side finding={before} none="new" /> <span aria-hidden="true">→</span>
        <span className="unseen">became</span> <Side finding={after} none="gone" />
      </span>
    </button>
  );
}

function Side({ finding, none }: { finding: Moved['before']; none: string }) {
  if (!finding) return <span>{none}</span>;
  const { value, kind, status } = finding;
  return (
    <span className="moved-side">
      <StatusMark status={status} />
      {value !== undefined && kind && <Quantity value={typeof value === 'number' ? value : value.likely} kind={kind} />}
    </span>
  );
}
