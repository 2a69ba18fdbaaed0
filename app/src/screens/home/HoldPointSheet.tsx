import type { Finding, HoldPointView } from '@kneewall/engine';
import { holdPointTitle } from '@kneewall/engine';
import { FindingLine } from '../../findings/FindingLine.tsx';
import { StatusMark } from '../../findings/StatusMark.tsx';

/** At most this many stand in plain sight; harm is always among them. */
const inSight = 5;

/** One hold point: what stands against it, worst first, and what holds, folded away. */
export function HoldPointSheet({ view, findings }: { view: HoldPointView; findings: readonly Finding[] }) {
  const { title, until } = holdPointTitle[view.holdPoint];
  const byId = new Map(findings.map((f) => [f.id, f]));
  const all = view.findings.flatMap((id) => byId.get(id) ?? []);
  const against = all.filter((f) => f.status !== 'ok');
  const holds = all.filter((f) => f.status === 'ok');
  const most = Math.max(inSight, against.filter((f) => f.consequence === 'harm').length);
  return (
    <section className={`hold-point ${view.findings.length === 0 ? 'bare' : ''}`}>
      <header>
        <h2>{title}</h2>
        <p className="hold-until">{until}</p>
        <ul className="counts small">
          {view.findings.length === 0 && <li>nothing checked yet</li>}
          {(['fails', 'tight', 'unknown', 'ok'] as const).map((status) =>
            view[status] === 0 ? null : (
              <li key={status}>
                <span className="count">{view[status]}</span> <StatusMark status={status} />
              </li>
            ),
          )}
        </ul>
      </header>
      {against.length > 0 && <Lines findings={against.slice(0, most)} />}
      <Folded findings={against.slice(most)} words="more against it" />
      <Folded findings={holds} words={holds.length === 1 ? 'holds' : 'hold'} />
    </section>
  );
}

function Lines({ findings }: { findings: readonly Finding[] }) {
  return (
    <ul>
      {findings.map((f) => (
        <li key={f.id}>
          <FindingLine finding={f} />
        </li>
      ))}
    </ul>
  );
}

function Folded({ findings, words }: { findings: readonly Finding[]; words: string }) {
  if (findings.length === 0) return null;
  return (
    <details className="fold hold-fold">
      <summary>
        <span className="fold-title">
          {findings.length} {words}
        </span>
      </summary>
      <Lines findings={findings} />
    </details>
  );
}
