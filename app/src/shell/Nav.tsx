import { tradeTitle } from '@kneewall/engine';
import { printRoute, type Route, useRoute } from '../route/route.ts';
import { usePlanner } from '../services.ts';
import './Nav.css';

const main: readonly {
  readonly route: Route;
  readonly words: string;
  readonly short: string;
  readonly icon: string;
}[] = [
  { route: { screen: 'home' }, words: 'Hold points', short: 'Home', icon: 'M4 20V10l8-6 8 6v10h-6v-6h-4v6z' },
  { route: { screen: 'first' }, words: 'First answer', short: 'First', icon: 'M5 4h14v16H5zM9 9h6M9 13h6M9 17h3' },
  {
    route: { screen: 'trades' },
    words: 'Trades',
    short: 'Trades',
    icon: 'M4 7h16M4 12h16M4 17h16M8 5v4M15 10v4M10 15v4',
  },
  {
    route: { screen: 'do' },
    words: 'What to do',
    short: 'Do',
    icon: 'M4 6l2 2 3-4M4 13l2 2 3-4M4 20l2 2 3-4M12 7h8M12 14h8M12 21h8',
  },
  {
    route: { screen: 'buy' },
    words: 'What to buy',
    short: 'Buy',
    icon: 'M3 5h3l2 10h10l2-7H7M9 18v2M17 18v2',
  },
  { route: { screen: 'read' }, words: 'Readings', short: 'Read', icon: 'M4 17a8 8 0 0 1 16 0zM12 17l4-6' },
  { route: { screen: 'project' }, words: 'Project and files', short: 'Project', icon: 'M4 6h6l2 2h8v11H4z' },
];

/** The ways through the app: along the bottom of a phone, down the side of anything wider. */
export function Nav() {
  const here = useRoute();
  const trades = usePlanner((p) => p.plan?.engine.trades) ?? [];
  const current = (route: Route) =>
    route.screen === here.screen &&
    (route.screen !== 'trade' || (here.screen === 'trade' && here.trade === route.trade))
      ? ('page' as const)
      : undefined;
  return (
    <nav className="nav" aria-label="Main">
      <p className="nav-brand" aria-hidden="true">
        Kneewall
      </p>
      <ul>
        {main.map(({ route, words, short, icon }) => (
          <li key={short}>
            <a href={printRoute(route)} aria-current={current(route)}>
              <svg viewBox="0 0 24 24" aria-hidden="true" focusable="false">
                <path d={icon} />
              </svg>
              <span className="nav-words">{words}</span>
              <span className="nav-short" aria-hidden="true">
                {short}
              </span>
            </a>
          </li>
        ))}
      </ul>
      <ul className="nav-more">
        {trades.map((trade) => (
          <li key={trade}>
            <a href={printRoute({ screen: 'trade', trade })} aria-current={current({ screen: 'trade', trade })}>
              {tradeTitle[trade]}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}
