import { heatsWords, type LogAnswers, type Plan, placeOfTaking, type Taking, takeFromLog } from '@kneewall/engine';
import { type Range, valueAt } from '@kneewall/project';
import { Button } from '../../../look/Button.tsx';
import { Quantity, QuantityRange } from '../../../quantity/Quantity.tsx';
import { useServices, useSession } from '../../../services.ts';
import { EffectTable } from './EffectTable.tsx';

type Props = { readonly name: string; readonly found: LogAnswers; readonly plan: Plan };

/** What this log taught, each with what it would change and one press to take it into the plan or back out of it. */
export function UseInPlan({ name, found, plan }: Props) {
  const chosen = plan.trades.equipment?.chosen;
  const unit = chosen?.ok ? chosen.value : undefined;
  const times = 'weak' in found.house ? undefined : found.house.times;
  const household = found.beside?.household;
  if (!times && !found.power && !household) return null;
  return (
    <section className="log-use" aria-label="Use it in the plan">
      <h3>Use it in the plan</h3>
      {times && (
        <Take taking="loss" title="Loss of the house" {...{ name, found, unit }}>
          The log has <Told range={times} /> of what the plan’s own house loses in the same weather. Walls, windows and
          leaks are then all taken times that: a log cannot part them, a blower door would.
        </Take>
      )}
      {found.power && (
        <Take taking="power" title="Power of the unit" {...{ name, found, unit }}>
          The unit drew <Told range={found.power} /> of what the plan expects for that heat. It is then planned to draw
          so much when it heats; what it can give at most stays that of its sheet.
        </Take>
      )}
      {household && !household.heats && (
        <Take taking="household" title="Household beside the unit" {...{ name, found, unit }}>
          The house takes <Quantity value={household.daily.likely} kind="energy" significant={3} /> (
          <QuantityRange range={household.daily} kind="energy" />) a day beside the unit, at the hours shown above. That
          stands in the place of what was entered; the range counts the seasons that were not logged.
        </Take>
      )}
      {household?.heats && <p>The household’s power is only told.{heatsWords}</p>}
      <NotTaken />
      <EffectTable plan={plan} />
      <p className="field-help">
        Nothing of a log is used before you say so. What the plan says by itself stays beside it, and one press takes a
        value back. Where you mend a leak or insulate afterwards, take the old value back and log again.
      </p>
    </section>
  );
}

/** What a log tells that is left out of the plan, and why. */
const NotTaken = () => (
  <details className="fold">
    <summary>
      <span className="fold-title">What is told and not taken over</span>
    </summary>
    <ul>
      <li>
        Sun: south windows cannot be told apart from all windows by this log, nor glass from sun on walls, and on a
        summer afternoon these are not the same. Where log and plan differ, look at shade, trees and curtains.
      </li>
      <li>
        How long the house stays warm: floors, walls and furniture are one in it, and it shows only where the house was
        let cool.
      </li>
      <li>
        What the unit gives at most: it cannot be told from a log of a unit that runs as slowly as it may. Only hours
        flat out in which the house cooled all the same would say it.
      </li>
    </ul>
  </details>
);

/** A share with the range it is known in. */
function Told({ range }: { readonly range: Range }) {
  return (
    <>
      <Quantity value={range.likely} kind="fraction" significant={3} /> (<QuantityRange range={range} kind="fraction" />
      )
    </>
  );
}

/** Its place in the document: where it is taken from now, if it is. */
type Taken = { readonly log?: string; readonly accepted?: string };

function Take({
  taking,
  title,
  name,
  found,
  unit,
  children,
}: {
  readonly taking: Taking;
  readonly title: string;
  readonly name: string;
  readonly found: LogAnswers;
  readonly unit: string | undefined;
  readonly children: React.ReactNode;
}) {
  const { session } = useServices();
  const barred = useSession((s) => s.barred !== undefined);
  const place = placeOfTaking(taking, unit);
  const taken = useSession((s) => valueAt(s.project, place) as Taken | undefined);
  const accepted = new Date().toISOString().slice(0, 10);
  const change = takeFromLog(taking, found, { name, unit, accepted });
  if (!change) return null;
  return (
    <div className="log-take">
      <h4>{title}</h4>
      <p>{children}</p>
      {taken && (
        <p className="log-taken">
          In the plan since <span className="log-day">{taken.accepted ?? 'an unknown day'}</span>, from the log “
          {taken.log ?? ''}”.
        </p>
      )}
      <div className="buttons">
        {taken?.log !== name && (
          <Button look="strong" disabled={barred} onClick={() => session.change([change])}>
            Use this in the plan
          </Button>
        )}
        {taken && (
          <Button disabled={barred} onClick={() => session.change([{ path: place, after: undefined }])}>
            Take it back
          </Button>
        )}
      </div>
    </div>
  );
}
