import './look/tokens.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { startAppWorker } from './install/appWorker.ts';
import { DeviceContext } from './install/device.ts';
import { keepingAsk } from './install/keeping.ts';
import { jobWorkerPort } from './jobs/workerPort.ts';
import { workerPort } from './planner/workerPort.ts';
import { createServices, openFirst, ServicesContext } from './services.ts';
import { App } from './shell/App.tsx';
import { indexedDbStore } from './store/indexedDbStore.ts';
import { keepTabsTogether } from './store/otherTabs.ts';
import { askToWrite } from './store/writerLock.ts';

const services = createServices(indexedDbStore(), workerPort(), jobWorkerPort);
const device = { app: startAppWorker(), keeping: keepingAsk() };
const { session } = services;

session.follow((event) => {
  if (event.type === 'acted') device.keeping.ask();
});
window.addEventListener('pagehide', session.hurry);
document.addEventListener('visibilitychange', () => {
  if (document.visibilityState === 'hidden') session.hurry();
});

keepTabsTogether(session);
const opened = openFirst(services);
if (!window.isSecureContext) void opened.finally(() => session.bar('insecure'));
else {
  const lock = askToWrite(() => void opened.finally(takeOver));
  // The lock is granted within a few milliseconds where no other tab holds it.
  void opened.finally(() => setTimeout(() => !lock.held() && lookOn(), 120));
}

/** Another tab writes; what it wrote while this one opened is read in at once. */
function lookOn(): void {
  session.bar('other-tab');
  void session.catchUp().catch(() => undefined);
}

/** This tab may write from now on. If another one wrote meanwhile, its work is read in first. */
async function takeOver(): Promise<void> {
  const { barred, origin } = session.now();
  if (barred === 'other-tab' && origin.kind === 'stored') await session.openStored(origin.id);
  session.bar(undefined);
}

const root = document.getElementById('root');
if (root)
  createRoot(root).render(
    <StrictMode>
      <ServicesContext value={services}>
        <DeviceContext value={device}>
          <App />
        </DeviceContext>
      </ServicesContext>
    </StrictMode>,
  );
