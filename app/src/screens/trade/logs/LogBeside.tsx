import { householdDay, type LogAnswers, untoldWords } from '@kneewall/engine';
import { printQuantity } from '@kneewall/project';
import { QuantityRange } from '../../../quantity/Quantity.tsx';
import { useSession, useUnits } from '../../../services.ts';
import './LogBeside.css';

type Beside = NonNullable<LogAnswers['beside']>;

/** What the columns of the whole house and the battery say, or why they say nothing. */
export function LogBeside({ beside }: { beside: Beside }) {
  const units = useUnits();
  const { household, byWeather, inverter, untold } = beside;
  return (
    <>
      <dl className="log-facts">
        {household && (
          <div>
            <dt>The house beside the unit takes, a day</dt>
            <dd>
              <QuantityRange range={household.daily} kind="energy" />
            </dd>
          </div>
        )}
        {byWeather && (
          <div>
            <dt>The whole house, a day</dt>
            <dd>
              {printQuantity(byWeather.base, 'energy', units, { significant: 2 })}, and more for each degree below{' '}
              {printQuantity(byWeather.point, 'temperature', units, { significant: 2 })}
            </dd>
          </div>
        )}
        {inverter && (
          <div>
            <dt>Goes to nothing on the battery at night</dt>
            <dd>
              <QuantityRange range={inverter.idle} kind="electric-power" />
            </dd>
          </div>
        )}
      </dl>
      {household && <Hours hours={household.hours} />}
      {untold.map((u) => (
        <p key={u.column} className="field-help">
          {untoldWords(u)}
        </p>
      ))}
    </>
  );
}

const [wide, tall] = [100, 44];
const room = { left: 3, top: 5, bottom: 8 };
const step = (wide - 2 * room.left) / 24;

/** The household by the hour of the day as bars, and the plan's as a line over them. */
function Hours({ hours }: { hours: readonly number[] }) {
  const units = useUnits();
  const planned = usePlanned();
  const most = Math.max(...hours, ...planned, 1);
  const y = (p: number): number => tall - room.bottom - ((tall - room.bottom - room.top) * Math.max(0, p)) / most;
  const line = planned.map((p, h) => `${room.left + step * h},${y(p)} ${room.left + step * (h + 1)},${y(p)}`).join(' ');
  const highest = hours.indexOf(Math.max(...hours));
  return (
    <figure className="log-hours">
      <figcaption>
        Beside the unit by the hour: most at {highest}:00,{' '}
        {printQuantity(hours[highest] ?? 0, 'power', units, { significant: 2, unit: 'W' })}.
        {planned.length > 0 && ' The line is the plan’s.'}
      </figcaption>
      <svg viewBox={`0 0 ${wide} ${tall}`} aria-hidden="true" focusable="false">
        {hours.map((p, h) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: an hour is its place.
          <rect key={h} x={room.left + step * h + 0.4} width={step - 0.8} y={y(p)} height={tall - room.bottom - y(p)} />
        ))}
        {planned.length > 0 && <polyline points={line} />}
        {[0, 6, 12, 18].map((h) => (
          <text key={h} x={room.left + step * h} y={tall - 2}>
            {h}:00
          </text>
        ))}
      </svg>
    </figure>
  );
}

/** W by hour that the plan has for the household; nothing where its use is not one number or a range. */
function usePlanned(): readonly number[] {
  const household = useSession((s) => s.project.power?.household);
  const value = household?.daily?.value;
  const daily = typeof value === 'number' ? value : value?.likely;
  if (daily === undefined) return [];
  const hours = household?.hours?.length === 24 ? household.hours : undefined;
  return [...householdDay({ daily, ...(hours ? { hours } : {}) }, 24)];
}
