import { demos } from '@kneewall/demos';
import type { Problem } from '@kneewall/project';
import { useEffect, useState } from 'react';
import { Button } from '../../look/Button.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { goTo } from '../../route/route.ts';
import { openDemo, useServices, useSession } from '../../services.ts';
import type { Listed } from '../../store/records.ts';
import { ProblemList } from './ProblemList.tsx';

/** Several projects may have the same name, or none yet: the moment tells them apart. */
const when = new Intl.DateTimeFormat('en', { dateStyle: 'long', timeStyle: 'short' });

/** The other projects on this device, and the demos. */
export function OthersSheet() {
  const { session, store } = useServices();
  const origin = useSession((s) => s.origin);
  const saved = useSession((s) => s.saving.waiting.length === 0);
  const [listed, setListed] = useState<readonly Listed[]>([]);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  useEffect(() => {
    if (saved) store.list().then(setListed, () => setListed([]));
  }, [store, saved]);
  const openStored = async (id: string) => {
    const found = await session.openStored(id);
    setProblems(found);
    if (found.length === 0) goTo({ screen: 'home' });
  };
  const others = listed
    .filter((l) => !(origin.kind === 'stored' && origin.id === l.id))
    .toSorted((a, b) => b.changed - a.changed);
  return (
    <Sheet title="Open another">
      <ul className="others">
        {others.map(({ id, name, changed }) => (
          <li key={id}>
            <Button onClick={() => void openStored(id)}>{name}</Button>
            <p className="field-help">Last changed {when.format(changed)}.</p>
          </li>
        ))}
        {demos.map(({ id, name, sentence }) => (
          <li key={id}>
            <Button
              disabled={origin.kind === 'demo' && origin.id === id}
              onClick={() => void openDemo(session, id).then(() => goTo({ screen: 'home' }))}
            >
              Demo: {name}
            </Button>
            <p className="field-help">{sentence}</p>
          </li>
        ))}
      </ul>
      <ProblemList problems={problems} />
    </Sheet>
  );
}
