import type { Route } from '../route/route.ts';
import { First } from '../screens/first/First.tsx';
import { Home } from '../screens/home/Home.tsx';
import { BuyScreen } from '../screens/lists/BuyScreen.tsx';
import { DoScreen } from '../screens/lists/DoScreen.tsx';
import { ReadScreen } from '../screens/lists/ReadScreen.tsx';
import { ProjectScreen } from '../screens/project/ProjectScreen.tsx';
import { TradeScreen } from '../screens/trade/TradeScreen.tsx';
import { TradesScreen } from '../screens/trade/TradesScreen.tsx';

/** The screen an address names. */
export function Screen({ route }: { route: Route }) {
  switch (route.screen) {
    case 'first':
      return <First />;
    case 'trades':
      return <TradesScreen />;
    case 'trade':
      return <TradeScreen trade={route.trade} />;
    case 'project':
      return <ProjectScreen />;
    case 'buy':
      return <BuyScreen />;
    case 'do':
      return <DoScreen />;
    case 'read':
      return <ReadScreen />;
    default:
      return <Home />;
  }
}
