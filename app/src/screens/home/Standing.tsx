import type { Mark, Status } from '@kneewall/engine';
import { StatusMark } from '../../findings/StatusMark.tsx';

/** The whole plan in one sentence, then the counts. Unknown is never counted among the good. */
export function Standing({ marks }: { marks: readonly Mark[] }) {
  const of = (status: Status) => marks.filter((m) => m.status === status);
  const harm = marks.filter((m) => m.status !== 'ok' && m.consequence === 'harm').length;
  const open = marks.length - of('ok').length;
  return (
    <>
      <p className="lead">
        {open === 0
          ? `All ${marks.length} checks made so far hold.`
          : `${open} of ${marks.length} checks do not hold yet.`}{' '}
        {harm > 0 && <strong>{harm === 1 ? 'One can hurt someone.' : `${harm} can hurt someone.`}</strong>}
      </p>
      <ul className="counts">
        {(['fails', 'tight', 'unknown', 'ok'] as const).map((status) => (
          <li key={status}>
            <span className="count">{of(status).length}</span> <StatusMark status={status} />
          </li>
        ))}
      </ul>
    </>
  );
}
