import { tradeTitle } from '@kneewall/engine';
import { useEffect } from 'react';
import { useRoute } from '../route/route.ts';
import { useSession, useView } from '../services.ts';
import { screenTitle } from '../words/words.ts';
import { Announcer } from './Announcer.tsx';
import { Banner } from './Banner.tsx';
import { Guard } from './Guard.tsx';
import { Header } from './Header.tsx';
import { Later, partOf } from './Later.tsx';
import { Nav } from './Nav.tsx';
import { Screen } from './Screen.tsx';
import { useUndoKeys } from './useUndoKeys.ts';
import '../look/ruler.css';
import './App.css';

const answerBar = partOf(() => import('../screens/first/AnswerBar.tsx').then((m) => m.AnswerBar));
const findingPanel = partOf(() => import('../findings/FindingPanel.tsx').then((m) => m.FindingPanel));

/** The whole page: header, ways, one screen, and the finding that stands open over it. */
export function App() {
  const theme = useView((v) => v.theme);
  const generation = useSession((s) => s.generation);
  const route = useRoute();
  const place = route.screen === 'trade' ? `trade/${route.trade}` : route.screen;
  const title = route.screen === 'trade' ? tradeTitle[route.trade] : screenTitle[route.screen];
  const asksForField = route.field !== undefined;
  useUndoKeys();
  useEffect(() => {
    document.documentElement.dataset.theme = theme;
  }, [theme]);
  useEffect(() => {
    document.title = `${title}: Kneewall`;
    // A field that is asked for brings itself into view; any other screen begins at its top.
    if (asksForField) return;
    const main = document.getElementById('main');
    main?.scrollTo(0, 0);
    main?.focus({ preventScroll: true });
  }, [title, asksForField]);
  return (
    <div className="app">
      <button type="button" className="skip" onClick={() => document.getElementById('main')?.focus()}>
        To the content
      </button>
      <Nav />
      <div className="page">
        <Header />
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls has to be reachable by keyboard */}
        <main id="main" tabIndex={0}>
          <Banner />
          {generation === 0 ? (
            <p className="lead">Opening</p>
          ) : (
            <Guard key={`${generation} ${place}`}>
              <Screen route={route} />
            </Guard>
          )}
        </main>
        {route.screen === 'first' && <Later part={answerBar} given={{}} />}
      </div>
      {route.finding !== undefined && <Later part={findingPanel} given={{}} />}
      <Announcer />
    </div>
  );
}
