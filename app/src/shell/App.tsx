import { useEffect } from 'react';
import { FindingPanel } from '../findings/FindingPanel.tsx';
import { useRoute } from '../route/route.ts';
import { useSession, useView } from '../services.ts';
import { Announcer } from './Announcer.tsx';
import { Banner } from './Banner.tsx';
import { Header } from './Header.tsx';
import { Nav } from './Nav.tsx';
import { Screen } from './Screen.tsx';
import { useUndoKeys } from './useUndoKeys.ts';
import '../look/ruler.css';
import './App.css';

/** The whole page: header, ways, one screen, and the finding that stands open over it. */
export function App() {
  const theme = useView((v) => v.theme);
  const generation = useSession((s) => s.generation);
  const route = useRoute();
  const place = route.screen === 'trade' ? `trade/${route.trade}` : route.screen;
  useUndoKeys();
  useEffect(() => {
    document.documentElement.dataset.theme = theme;
  }, [theme]);
  useEffect(() => {
    // A new screen begins at its top; a field that is asked for scrolls itself into view afterwards.
    window.scrollTo(0, 0);
    document.title = `Kneewall: ${place.replace('trade/', '')}`;
  }, [place]);
  return (
    <div className="app">
      <button type="button" className="skip" onClick={() => document.getElementById('main')?.focus()}>
        To the content
      </button>
      <Nav />
      <div className="page">
        <Header />
        <main id="main" tabIndex={-1}>
          <Banner />
          {generation === 0 ? <p className="lead">Opening</p> : <Screen key={`${generation} ${place}`} route={route} />}
        </main>
      </div>
      <FindingPanel />
      <Announcer />
    </div>
  );
}
