import { FindingLine } from '../../findings/FindingLine.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import { useSession } from '../../services.ts';
import { pathLabel } from '../../words/pathLabel.ts';
import type { FirstAnswer } from './answer.ts';
import { measurementsFor } from './measurements.ts';

/** One thing to change, and the measurements that would settle most. */
export function NextSteps({ answer: { change, heating } }: { answer: FirstAnswer }) {
  const project = useSession((s) => s.project);
  const measurements = measurementsFor(heating?.drivers ?? []);
  return (
    <>
      {change && (
        <div className="answer-line">
          <h3>One thing to change</h3>
          <FindingLine finding={change} />
        </div>
      )}
      {measurements.length > 0 && (
        <div className="answer-line">
          <h3>What to find out next</h3>
          <ol className="measurements">
            {measurements.map((m) => (
              <li key={m.path}>
                <strong>{m.how}</strong>
                {m.minutes !== undefined && <> (about {m.minutes} minutes)</>}. It settles “{pathLabel(m.path, project)}
                ”, worth up to <Quantity value={m.reach} kind="power" />.
              </li>
            ))}
          </ol>
        </div>
      )}
    </>
  );
}
