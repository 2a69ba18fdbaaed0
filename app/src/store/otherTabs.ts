import type { Session } from '../session/session.ts';

const channelName = 'kneewall-written';

/** Tells other tabs whenever something was written, and reads in here what another one wrote. */
export function keepTabsTogether(session: Session): void {
  if (!('BroadcastChannel' in globalThis)) return;
  const channel = new BroadcastChannel(channelName);
  channel.onmessage = () => void session.catchUp().catch(() => undefined);
  let waiting = 0;
  session.subscribe(() => {
    const before = waiting;
    waiting = session.now().saving.waiting.length;
    if (waiting < before) channel.postMessage('');
  });
}
