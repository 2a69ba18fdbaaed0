import type { Because, Outcome } from '@kneewall/engine';
import { nodeAt, pathLabel } from '@kneewall/project';
import type { ReactNode } from 'react';
import { StatusMark } from '../../findings/StatusMark.tsx';
import { printRoute } from '../../route/route.ts';
import { useSession } from '../../services.ts';
import { tradeOf } from '../../words/words.ts';

const reason: Readonly<Record<Because, string>> = {
  missing: 'not known yet. Enter',
  pending: 'still being worked out.',
  'not-converged': 'not found: the flows did not settle.',
  'out-of-range': 'beyond what the data sheet states:',
  fault: 'not worked out: a mistake in the program.',
};

/** A result, or in its place why there is none and what would give it. */
export function OutcomeOr<T>({
  outcome,
  what,
  children,
}: {
  outcome: Outcome<T>;
  what: string;
  children: (value: T) => ReactNode;
}) {
  if (outcome.ok) return children(outcome.value);
  return <NotKnown what={what} because={outcome.because} paths={outcome.paths} />;
}

function NotKnown({ what, because, paths }: { what: string; because: Because; paths: readonly string[] }) {
  const project = useSession((s) => s.project);
  const places = [...new Set(paths)].filter((p) => nodeAt((p.split('#')[0] ?? p).split('.')) !== undefined).slice(0, 4);
  return (
    <p className="not-known">
      <StatusMark status="unknown" /> {what}: {reason[because]}{' '}
      {places.map((path, i) => {
        const trade = tradeOf(path.split('.'));
        const words = pathLabel(path, project);
        return (
          <span key={path}>
            {i > 0 && ', '}
            {trade ? <a href={printRoute({ screen: 'trade', trade, field: path })}>{words}</a> : words}
          </span>
        );
      })}
    </p>
  );
}
