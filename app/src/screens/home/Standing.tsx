import type { Plan, Status } from '@kneewall/engine';
import { StatusMark } from '../../findings/StatusMark.tsx';

/** The whole plan in one sentence, then the counts. Unknown is never counted among the good. */
export function Standing({ plan }: { plan: Plan }) {
  const of = (status: Status) => plan.findings.filter((f) => f.status === status);
  const harm = plan.findings.filter((f) => f.status !== 'ok' && f.consequence === 'harm').length;
  const open = plan.findings.length - of('ok').length;
  return (
    <>
      <p className="lead">
        {open === 0
          ? `All ${plan.findings.length} checks made so far hold.`
          : `${open} of ${plan.findings.length} checks do not hold yet.`}{' '}
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
