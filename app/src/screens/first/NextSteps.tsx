import { answerTitles, type FirstAnswer, measurementsFor, measurementWorth, printerFor } from '@kneewall/engine';
import { pathLabel } from '@kneewall/project';
import { FindingLine } from '../../findings/FindingLine.tsx';
import { useSession, useUnits } from '../../services.ts';

/** One thing to change, and the measurements that would settle most. */
export function NextSteps({ answer: { change, heating } }: { answer: FirstAnswer }) {
  const project = useSession((s) => s.project);
  const print = printerFor(useUnits());
  const measurements = measurementsFor(heating?.drivers ?? []);
  return (
    <>
      {change && (
        <div className="answer-line">
          <h3>{answerTitles.change}</h3>
          <FindingLine finding={change} />
        </div>
      )}
      {measurements.length > 0 && (
        <div className="answer-line">
          <h3>{answerTitles.next}</h3>
          <ol className="measurements">
            {measurements.map((m) => (
              <li key={m.path}>
                <strong>{m.how}</strong>
                {measurementWorth(m, (path) => pathLabel(path, project), print)}
              </li>
            ))}
          </ol>
        </div>
      )}
    </>
  );
}
