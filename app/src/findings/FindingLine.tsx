import type { Finding } from '@kneewall/engine';
import { consequenceTitle, tradeTitle } from '@kneewall/engine';
import { glued } from '@kneewall/project';
import { goTo, useRoute } from '../route/route.ts';
import { StatusMark } from './StatusMark.tsx';
import './FindingLine.css';

/** One finding in a list: a tap opens its working. */
export function FindingLine({ finding, trade = true }: { finding: Finding; trade?: boolean }) {
  const route = useRoute();
  const open = () => goTo({ ...route, finding: finding.id });
  return (
    <button
      type="button"
      className={`finding-line ${finding.status} ${finding.status !== 'ok' ? finding.consequence : ''}`}
      onClick={open}
    >
      <StatusMark status={finding.status} />
      <span className="finding-words">
        <span className="finding-what">{glued(finding.what)}</span>
        {finding.status !== 'ok' && <span className="finding-mend">{glued(finding.mend)}</span>}
      </span>
      <span className="finding-tags">
        {finding.status !== 'ok' && (
          <span className={finding.consequence === 'harm' ? 'finding-harm' : ''}>
            {consequenceTitle[finding.consequence]}
          </span>
        )}
        {trade && <span>{tradeTitle[finding.trade]}</span>}
      </span>
    </button>
  );
}
