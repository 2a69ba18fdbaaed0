import type { Finding, Source } from '@kneewall/engine';
import { consequenceTitle, holdPointTitle, tradeTitle } from '@kneewall/engine';
import { glued, nodeAt, pathLabel } from '@kneewall/project';
import { Quantity } from '../quantity/Quantity.tsx';
import { RangeTape } from '../quantity/RangeTape.tsx';
import { printRoute } from '../route/route.ts';
import { useSession } from '../services.ts';
import { tradeOf } from '../words/words.ts';
import { SourceWords } from './SourceWords.tsx';
import { StatusMark } from './StatusMark.tsx';

/** What is stated, why it matters and what would mend it. A caution comes first. */
export function FindingFacts({ finding: f, sources }: { finding: Finding; sources: Readonly<Record<string, Source>> }) {
  const { title, until } = holdPointTitle[f.holdPoint];
  return (
    <>
      <p className="finding-kicker">
        <StatusMark status={f.status} />
        <span>{tradeTitle[f.trade]}</span>
        <span>
          {title}: {until}
        </span>
        {f.status !== 'ok' && <span>{consequenceTitle[f.consequence]}</span>}
      </p>
      {f.caution && (
        <p className="caution">
          <strong>Stop and read.</strong> {f.caution}
        </p>
      )}
      <h2 id="finding-title">{glued(f.what)}</h2>
      <FindingValue finding={f} />
      <dl className="finding-facts">
        <div>
          <dt>Why it matters</dt>
          <dd>{glued(f.why)}</dd>
        </div>
        <div>
          <dt>What would mend it</dt>
          <dd>{glued(f.mend)}</dd>
        </div>
        <Needs needs={f.needs ?? []} />
        <div>
          <dt>Where the limit comes from</dt>
          <dd>
            <SourceWords source={sources[f.source]} id={f.source} />
          </dd>
        </div>
      </dl>
    </>
  );
}

function FindingValue({ finding: { value, kind, limit } }: { finding: Finding }) {
  if (value === undefined || kind === undefined) return null;
  return (
    <div className="finding-value">
      {typeof value === 'number' ? (
        <p className="finding-number">
          <Quantity value={value} kind={kind} />
        </p>
      ) : (
        <RangeTape range={value} kind={kind} />
      )}
      {limit && (
        <p>
          {limit.min !== undefined && (
            <>
              at least <Quantity value={limit.min} kind={kind} />{' '}
            </>
          )}
          {limit.max !== undefined && (
            <>
              at most <Quantity value={limit.max} kind={kind} />
            </>
          )}
        </p>
      )}
    </div>
  );
}

function Needs({ needs }: { needs: readonly string[] }) {
  const project = useSession((s) => s.project);
  const paths = needs.filter((path) => nodeAt(path.split('.')) !== undefined);
  if (paths.length === 0) return null;
  return (
    <div>
      <dt>What would make it known</dt>
      <dd>
        <ul className="finding-needs">
          {paths.map((path) => {
            const trade = tradeOf(path.split('.'));
            const words = pathLabel(path, project);
            return (
              <li key={path}>
                {trade ? <a href={printRoute({ screen: 'trade', trade, field: path })}>{words}</a> : words}
              </li>
            );
          })}
        </ul>
      </dd>
    </div>
  );
}
