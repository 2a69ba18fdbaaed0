import { pathLabel } from '@kneewall/project';
import { usePlanner, useSession } from '../services.ts';

/** Says politely, to those who do not see it, what a change did. */
export function Announcer() {
  const moved = usePlanner((p) => p.moved);
  const by = usePlanner((p) => p.movedBy);
  const project = useSession((s) => s.project);
  const failing = moved.filter((m) => m.after?.status === 'fails' && m.before?.status !== 'fails').length;
  const mended = moved.filter((m) => m.after?.status === 'ok' && m.before?.status !== 'ok').length;
  return (
    <p className="unseen" aria-live="polite">
      {by &&
        `${pathLabel(by, project)} changed. ${moved.length} findings moved, ${failing} now fail, ${mended} now hold.`}
    </p>
  );
}
