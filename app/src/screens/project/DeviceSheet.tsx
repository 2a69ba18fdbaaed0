import { useSyncExternalStore } from 'react';
import type { AppState } from '../../install/appWorker.ts';
import { useDevice } from '../../install/device.ts';
import type { Keeping } from '../../install/keeping.ts';
import { Button } from '../../look/Button.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { useSession } from '../../services.ts';

const appWords: Readonly<Record<AppState, string>> = {
  starting: 'Kneewall is being put on this device, so that it works without a network.',
  ready: 'Kneewall is on this device and works without a network.',
  update: 'A newer Kneewall is here and waits until you want it.',
  absent: 'Kneewall is not kept on this device: it needs its server each time it is opened.',
};
const keepingWords: Readonly<Record<Keeping, string>> = {
  unasked: 'After the first change the browser is asked to keep what is stored.',
  kept: 'The browser has promised to keep what is stored.',
  'may-be-emptied':
    'The browser has not promised to keep what is stored: it may empty it when the device runs full. Save a file after each session.',
};

/** Where the work is, in words, and whether it will still be there. */
export function DeviceSheet() {
  const device = useDevice();
  const app = useSyncExternalStore(device.app.subscribe, device.app.now);
  const keeping = useSyncExternalStore(device.keeping.subscribe, device.keeping.now);
  const waiting = useSession((s) => s.saving.waiting.length);
  const origin = useSession((s) => s.origin.kind);
  const onlyHere = useSession((s) => s.onlyHere);
  return (
    <Sheet title="On this device">
      <p>{storedWords(origin, waiting, onlyHere)}</p>
      <p>{appWords[app]}</p>
      {app === 'update' && (
        <Button look="strong" disabled={waiting > 0} onClick={device.app.update}>
          Change to the newer Kneewall
        </Button>
      )}
      <p className="field-help">{keepingWords[keeping]}</p>
    </Sheet>
  );
}

function storedWords(origin: string, waiting: number, onlyHere: number): string {
  if (waiting > 0) return `${waiting} ${waiting === 1 ? 'change is' : 'changes are'} not saved yet.`;
  if (origin !== 'stored') return 'What is open is not stored on this device. The first change stores it.';
  return onlyHere === 1 ? 'One change is only on this device.' : `${onlyHere} changes are only on this device.`;
}
