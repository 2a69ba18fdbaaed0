import type { Log, Plan } from '@kneewall/engine';
import { Sheet } from '../../../look/Sheet.tsx';
import { useSession } from '../../../services.ts';
import { LogImport } from './LogImport.tsx';
import { LogKept } from './LogKept.tsx';

/** What the winter taught: logs are taken in here, and what each says stands below it. */
export function LogSheets({ logs, plan }: { logs: readonly Log[]; plan: Plan }) {
  const entries = useSession((s) => s.project.logs) ?? {};
  return (
    <>
      <Sheet title="What the winter taught">
        <p>
          A table from meters, an inverter or thermometers says what the house really loses and the unit really draws.
          Outdoor air, indoor air and the unit’s power are the least; heat, sun and wind make it surer.
        </p>
        <LogImport />
      </Sheet>
      {Object.entries(entries).map(([id, entry]) => (
        <LogKept key={id} id={id} entry={entry} log={logs.find((l) => l.id === id)} plan={plan} />
      ))}
    </>
  );
}
