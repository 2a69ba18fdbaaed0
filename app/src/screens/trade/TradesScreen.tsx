import type { Status } from '@kneewall/engine';
import { tradeTitle } from '@kneewall/engine';
import { StatusMark } from '../../findings/StatusMark.tsx';
import { printRoute } from '../../route/route.ts';
import { usePlanner } from '../../services.ts';
import './TradesScreen.css';

/** The trades that are built, each with how it stands. */
export function TradesScreen() {
  const plan = usePlanner((p) => p.plan);
  if (!plan) return <h1>Trades</h1>;
  const count = (trade: string, status: Status) =>
    plan.findings.filter((f) => f.trade === trade && f.status === status).length;
  return (
    <>
      <h1>Trades</h1>
      <ul className="trades">
        {plan.engine.trades.map((trade) => (
          <li key={trade}>
            <a className="sheet" href={printRoute({ screen: 'trade', trade })}>
              <span className="trades-name">{tradeTitle[trade]}</span>
              <span className="counts small">
                {(['fails', 'tight', 'unknown', 'ok'] as const).map((status) => {
                  const n = count(trade, status);
                  return n === 0 ? null : (
                    <span key={status} className="trades-count">
                      <span className="count">{n}</span> <StatusMark status={status} />
                    </span>
                  );
                })}
              </span>
            </a>
          </li>
        ))}
      </ul>
    </>
  );
}
