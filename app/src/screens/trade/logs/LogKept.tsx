import { heatFromWords, type Log, type LogAnswers, logFitKind, type Plan, weakWords } from '@kneewall/engine';
import { dayText, faultWords, type LogEntry, type LogFault } from '@kneewall/project';
import { Button } from '../../../look/Button.tsx';
import { Sheet } from '../../../look/Sheet.tsx';
import { Quantity, QuantityRange } from '../../../quantity/Quantity.tsx';
import { useServices, useSession } from '../../../services.ts';
import { JobOffer } from '../JobOffer.tsx';
import { OutcomeOr } from '../OutcomeOr.tsx';
import { LogBeside } from './LogBeside.tsx';
import { LogChange } from './LogChange.tsx';
import { LogPoints } from './LogPoints.tsx';
import { UseInPlan } from './UseInPlan.tsx';

type Props = { readonly id: string; readonly entry: LogEntry; readonly log: Log | undefined; readonly plan: Plan };

/** One log of the project: how it stands, what it says, and the way to take it out. */
export function LogKept({ id, entry, log, plan }: Props) {
  const { session } = useServices();
  const barred = useSession((s) => s.barred !== undefined);
  const learned = log?.learned;
  return (
    <Sheet title={`By the log “${entry.name ?? id}”`}>
      {!learned ? (
        <p>Being read.</p>
      ) : !learned.ok && learned.because === 'pending' ? (
        <JobOffer kind={logFitKind} job={learned.paths[0]} name="What the log says">
          The log is read through and the house is fitted to it: a few seconds.
        </JobOffer>
      ) : (
        <OutcomeOr outcome={learned} what="What this log says">
          {(found) => (
            <>
              <Told found={found} />
              <UseInPlan name={entry.name ?? id} found={found} plan={plan} />
            </>
          )}
        </OutcomeOr>
      )}
      <div className="buttons">
        <Button
          look="quiet"
          disabled={barred}
          onClick={() => session.change([{ path: ['logs', id], after: undefined }])}
        >
          Take this log out
        </Button>
      </div>
    </Sheet>
  );
}

function Told({ found }: { found: LogAnswers }) {
  const { house } = found;
  return (
    <>
      {'weak' in house ? (
        <p className="lead">It says too little: {weakWords[house.weak]}.</p>
      ) : (
        <>
          <Figures found={found} />
          <LogPoints points={house.points} loss={house.lossPerDegree.likely} />
        </>
      )}
      {found.beside && <LogBeside beside={found.beside} />}
      <Rows found={found} />
    </>
  );
}

function Figures({ found }: { found: LogAnswers }) {
  const { house, warmth, power, change, heatFrom, wind, days } = found;
  if ('weak' in house) return null;
  return (
    <>
      <p className="lead">
        The house loses <QuantityRange range={house.lossPerDegree} kind="conductance" /> for each degree, by {days}{' '}
        days.
        {house.planned !== undefined && (
          <>
            {' '}
            The plan’s own house in that weather: <Quantity value={house.planned} kind="conductance" />.
          </>
        )}
      </p>
      <dl className="log-facts">
        {house.aperture && (
          <div>
            <dt>Takes in as much sun as a roof opening of</dt>
            <dd>
              {found.sun === 'measured' ? (
                <>
                  <QuantityRange range={house.aperture} kind="area" />
                  {house.plannedAperture !== undefined && (
                    <>
                      {' '}
                      (plan: <Quantity value={house.plannedAperture} kind="area" />)
                    </>
                  )}
                </>
              ) : (
                'told by the panels only'
              )}
            </dd>
          </div>
        )}
        {warmth && (
          <div>
            <dt>Left alone, two thirds of its warmth are gone after</dt>
            <dd>
              <QuantityRange range={inSeconds(warmth.slowHours)} kind="time" />
            </dd>
          </div>
        )}
        {power && (
          <div>
            <dt>Power, of what the plan expects for that heat</dt>
            <dd>
              <QuantityRange range={power} kind="fraction" />
            </dd>
          </div>
        )}
        {change && (
          <div>
            <dt>Changed</dt>
            <dd>
              <LogChange change={change} />
            </dd>
          </div>
        )}
      </dl>
      <p className="field-help">
        {heatFrom && heatFromWords[heatFrom]} {!wind && 'Wind was not logged, so the range is wide.'}{' '}
        {!warmth && 'The indoor temperature never moved enough to say how long the house stays warm.'} Nine of ten such
        ranges hold the truth.
      </p>
    </>
  );
}

type Range = { readonly low: number; readonly likely: number; readonly high: number };
const inSeconds = ({ low, likely, high }: Range): Range => ({
  low: 3600 * low,
  likely: 3600 * likely,
  high: 3600 * high,
});

/** What was read, and how often what was wrong. */
function Rows({ found }: { found: LogAnswers }) {
  const faults = Object.entries(found.faults);
  return (
    <details className="fold">
      <summary>
        <span className="fold-title">
          {found.rows} rows, {faults.length === 0 ? 'nothing wrong' : `${faults.length} kinds of fault`}
        </span>
      </summary>
      <p>
        From {dayText(found.from)} to {dayText(found.to)}, most rows <Quantity value={found.step} kind="time" /> apart.
      </p>
      {found.asks.map((ask) => (
        <p key={ask} className="not-known">
          {ask}
        </p>
      ))}
      {faults.length > 0 && (
        <ul>
          {faults.map(([fault, { count, firstLine, what }]) => (
            <li key={fault}>
              {count} × {faultWords[fault as LogFault]}; the first in line {firstLine}
              {what && `: “${what}”`}
            </li>
          ))}
        </ul>
      )}
    </details>
  );
}
