import { useEffect } from 'react';
import type { Route } from '../route/route.ts';
import { Home } from '../screens/home/Home.tsx';
import { usePlanner } from '../services.ts';
import { Later, type Part, partOf } from './Later.tsx';

const lists = () => import('../screens/lists/index.ts');
const trade = () => import('../screens/trade/index.ts');

const first = partOf(() => import('../screens/first/First.tsx').then((m) => m.First));
const tradesScreen = partOf(() => trade().then((m) => m.TradesScreen));
const tradeScreen = partOf(() => trade().then((m) => m.TradeScreen));
const project = partOf(() => import('../screens/project/ProjectScreen.tsx').then((m) => m.ProjectScreen));
const buy = partOf(() => lists().then((m) => m.BuyScreen));
const todo = partOf(() => lists().then((m) => m.DoScreen));
const read = partOf(() => lists().then((m) => m.ReadScreen));

/** What cannot be fetched now is asked for again, and missed, when it is to be shown. */
function fetchLater(): void {
  for (const screen of [first, tradesScreen, tradeScreen, project, buy, todo, read])
    screen.fetch().catch(() => undefined);
}

/** The screen an address names. Home comes with the page; the others follow as soon as the first plan is in sight. */
export function Screen({ route }: { route: Route }) {
  const planned = usePlanner((p) => p.plan !== undefined);
  useEffect(() => {
    if (planned) setTimeout(fetchLater, 0);
  }, [planned]);
  switch (route.screen) {
    case 'first':
      return <Opened part={first} />;
    case 'trades':
      return <Opened part={tradesScreen} />;
    case 'trade':
      return <Later part={tradeScreen} given={{ trade: route.trade }} meanwhile="Opening" />;
    case 'project':
      return <Opened part={project} />;
    case 'buy':
      return <Opened part={buy} />;
    case 'do':
      return <Opened part={todo} />;
    case 'read':
      return <Opened part={read} />;
    default:
      return <Home />;
  }
}

const Opened = ({ part }: { part: Part<object> }) => <Later part={part} given={{}} meanwhile="Opening" />;
