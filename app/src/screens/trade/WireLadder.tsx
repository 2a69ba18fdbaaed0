import { sizeName, type TradeResults } from '@kneewall/engine';
import type { ReactNode } from 'react';
import { Quantity } from '../../quantity/Quantity.tsx';
import { OutcomeOr } from './OutcomeOr.tsx';
import './WireLadder.css';

type Circuit = TradeResults['circuit'];
type Run = Circuit['runs'][number];

const endOf: Readonly<Record<Run['id'], string>> = { outdoor: 'Outdoor unit', handler: 'Air handler' };

/** From the supply down to the units: what stands at each place, and the wire between two of them. */
export function WireLadder({ result }: { result: Circuit }) {
  const { runs, between } = result;
  const handlerHasOwn = runs.some((r) => r.id === 'handler');
  return (
    <div className="wire-ladders">
      {runs.map((run) => (
        <ol key={run.id} className="wire-ladder" aria-label={`Wires to the ${endOf[run.id].toLowerCase()}`}>
          <Start result={result} run={run} />
          <RunRung run={run} dropMost={result.dropMost} />
          <Place name="Disconnect">
            {run.disconnect.ok && (
              <>
                <Quantity value={run.disconnect.value.size} kind="current" />, in sight of the unit
              </>
            )}
          </Place>
          <Place name={endOf[run.id]} />
          {run.id === 'outdoor' && between && !handlerHasOwn && <Between between={between} power />}
        </ol>
      ))}
      {handlerHasOwn && between && (
        <ol className="wire-ladder" aria-label="Cable between the units">
          <Place name="Outdoor unit" />
          <Between between={between} power={false} />
        </ol>
      )}
    </div>
  );
}

function Start({ result, run }: { result: Circuit; run: Run }) {
  const { battery, supply } = result;
  const breaker = run.protection.ok && (
    <>
      breaker or fuse <Quantity value={run.protection.value.size} kind="current" />
    </>
  );
  if (supply === 'grid') return <Place name="Panel">{breaker}</Place>;
  return (
    <>
      {battery?.ok && (
        <>
          <Place name="Battery" />
          <li className="wire-rung">
            <p>
              <Quantity value={battery.value.current} kind="current" /> at the inverter’s full power; a fuse of{' '}
              <Quantity value={battery.value.fuse} kind="current" /> or more, at the battery.
            </p>
          </li>
        </>
      )}
      <Place name="Inverter">{breaker}</Place>
    </>
  );
}

function Place({ name, children }: { name: string; children?: ReactNode }) {
  return (
    <li className="wire-place">
      <strong>{name}</strong>
      {children && <span className="wire-aside">{children}</span>}
    </li>
  );
}

function RunRung({ run, dropMost }: { run: Run; dropMost: number }) {
  return (
    <li className="wire-rung">
      <OutcomeOr outcome={run.conductor} what="Conductors">
        {({ area, own }) => (
          <p className="wire-size">
            {sizeName(area)} {run.metal}
            {run.ground.ok && <>, ground {sizeName(run.ground.value.area)}</>}
            {own && <span className="wire-aside">as you mean to use</span>}
          </p>
        )}
      </OutcomeOr>
      {run.rating.ok && (
        <p>
          Wires for <Quantity value={run.rating.value.least.likely} kind="current" /> at least, breaker of{' '}
          <Quantity value={run.rating.value.most} kind="current" /> at most.
          {run.ampacity.ok && run.ambient.ok && (
            <>
              {' '}
              These carry <Quantity value={run.ampacity.value.low} kind="current" /> in air of{' '}
              <Quantity value={run.ambient.value.high} kind="temperature" />.
            </>
          )}
        </p>
      )}
      <OutcomeOr outcome={run.drop} what="The voltage lost">
        {(drop) => <DropBar run={run} drop={drop} most={dropMost} />}
      </OutcomeOr>
    </li>
  );
}

type Drop = Extract<Run['drop'], { ok: true }>['value'];

/** The share of the voltage lost against the most that it may be, which is the bar's full width. */
function DropBar({ run, drop, most }: { run: Run; drop: Drop; most: number }) {
  const used = most > 0 ? Math.min(1, drop.share.likely / most) : 1;
  const over = drop.share.likely > most;
  return (
    <div className={over ? 'wire-drop over' : 'wire-drop'}>
      <p>
        {run.length.ok && (
          <>
            <Quantity value={run.length.value.likely} kind="length" /> one way loses{' '}
          </>
        )}
        <Quantity value={drop.volts.likely} kind="voltage-difference" />,{' '}
        <Quantity value={drop.share.likely} kind="fraction" /> of at most <Quantity value={most} kind="fraction" />
        {over && ': too much'}.
      </p>
      <svg viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true" focusable="false">
        <rect className="wire-drop-rail" width="100" height="8" />
        <rect className="wire-drop-used" width={100 * used} height="8" />
      </svg>
    </div>
  );
}

function Between({ between, power }: { between: NonNullable<Circuit['between']>; power: boolean }) {
  return (
    <>
      <li className="wire-rung">
        <OutcomeOr outcome={between.wanted} what="The cable between the units">
          {(count) => (
            <p className="wire-size">
              {count} conductors, the ground among them
              {between.size !== undefined && <>, {sizeName(between.size)}</>}
              {between.screened && ', screened'}
            </p>
          )}
        </OutcomeOr>
        <p>
          {power ? 'It carries the air handler’s power and the signal.' : 'It carries the signal.'}
          {between.conductors.ok && <> You mean to pull {between.conductors.value}.</>}
          {between.length.ok && (
            <>
              {' '}
              <Quantity value={between.length.value.likely} kind="length" />
              {between.longest !== undefined && (
                <>
                  {' '}
                  of at most <Quantity value={between.longest} kind="length" />
                </>
              )}
              .
            </>
          )}
        </p>
      </li>
      <Place name="Air handler" />
    </>
  );
}
