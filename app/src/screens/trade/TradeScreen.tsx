import { tradeTitle, worstFirst } from '@kneewall/engine';
import type { TradeId } from '@kneewall/project';
import { nodeAt } from '@kneewall/project';
import { lazy, Suspense } from 'react';
import { FindingLine } from '../../findings/FindingLine.tsx';
import { FormNode } from '../../form/FormNode.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { usePlanner } from '../../services.ts';
import { tradeParts } from '../../words/words.ts';
import { JobsSheet } from '../home/JobsSheet.tsx';
import { MovedSheet } from '../home/MovedSheet.tsx';
import { AirResultSheets } from './AirResultSheets.tsx';
import { CircuitResultSheets } from './CircuitResultSheets.tsx';
import { ClimateResultSheets } from './ClimateResultSheets.tsx';
import { CondensateResultSheets } from './CondensateResultSheets.tsx';
import { EquipmentResultSheets } from './EquipmentResultSheets.tsx';
import { LinesetResultSheets } from './LinesetResultSheets.tsx';
import { LoadsResultSheets } from './LoadsResultSheets.tsx';
import './Trade.css';

/** Fetched when it is looked at: charts and tables that few projects need do not hold back the first drawing. */
const LogSheets = lazy(() => import('./logs/LogSheets.tsx').then((m) => ({ default: m.LogSheets })));
const AccessResultSheets = lazy(() => import('./AccessResultSheets.tsx'));
const BalancingSheets = lazy(() => import('./BalancingSheets.tsx'));
const MaterialsResultSheets = lazy(() => import('./MaterialsResultSheets.tsx'));
const OffgridResultSheets = lazy(() => import('./OffgridResultSheets.tsx'));
const PaperworkSheets = lazy(() => import('./paperwork/PaperworkSheets.tsx'));
const ScheduleResultSheets = lazy(() => import('./ScheduleResultSheets.tsx'));

/** One trade: what it says, what stands against it, and what it is worked out from. */
export function TradeScreen({ trade }: { trade: TradeId }) {
  return (
    <>
      <header className="screen-head">
        <h1>{tradeTitle[trade]}</h1>
      </header>
      <JobsSheet />
      <MovedSheet />
      <Result trade={trade} />
      <Findings trade={trade} />
      {tradeParts[trade].map((path) => (
        <Part key={path.join('.')} path={path} />
      ))}
    </>
  );
}

function Result({ trade }: { trade: TradeId }) {
  const plan = usePlanner((p) => p.plan);
  const { trades, agreement, season } = plan ?? {};
  if (trade === 'climate' && trades?.climate) return <ClimateResultSheets result={trades.climate} />;
  if (trade === 'loads' && trades?.loads && season) return <LoadsResultSheets result={trades.loads} season={season} />;
  if (trade === 'equipment' && trades?.equipment && season)
    return <EquipmentResultSheets result={trades.equipment} season={season} />;
  if (trade === 'air' && plan && trades?.air && agreement)
    return <AirResultSheets result={trades.air} agreement={agreement} plan={plan} />;
  if (trade === 'condensate' && plan && trades?.condensate)
    return <CondensateResultSheets result={trades.condensate} plan={plan} />;
  if (trade === 'lineset' && trades?.lineset) return <LinesetResultSheets result={trades.lineset} />;
  if (trade === 'access' && trades?.access)
    return (
      <Suspense fallback={<Sheet title="Ways in">Opening…</Sheet>}>
        <AccessResultSheets result={trades.access} />
      </Suspense>
    );
  if (trade === 'circuit' && trades?.circuit) return <CircuitResultSheets result={trades.circuit} />;
  if (trade === 'offgrid' && trades?.offgrid && plan)
    return (
      <Suspense fallback={<Sheet title="Own power">Opening…</Sheet>}>
        <OffgridResultSheets result={trades.offgrid} plan={plan} />
      </Suspense>
    );
  if (trade === 'materials' && trades?.materials && plan)
    return (
      <Suspense fallback={<Sheet title="What it costs">Opening…</Sheet>}>
        <MaterialsResultSheets result={trades.materials} plan={plan} />
      </Suspense>
    );
  if (trade === 'paperwork' && trades?.paperwork && plan)
    return (
      <Suspense fallback={<Sheet title="Papers">Opening…</Sheet>}>
        <PaperworkSheets result={trades.paperwork} plan={plan} />
      </Suspense>
    );
  if (trade === 'schedule' && trades?.schedule && plan)
    return (
      <Suspense fallback={<Sheet title="The plan of work">Opening…</Sheet>}>
        <ScheduleResultSheets result={trades.schedule} plan={plan} />
      </Suspense>
    );
  if (trade === 'commissioning' && trades?.commissioning && plan)
    return (
      <Suspense fallback={<Sheet title="Dampers to move, logs">Opening…</Sheet>}>
        <BalancingSheets visits={trades.commissioning.visits} />
        <LogSheets logs={trades.commissioning.logs} plan={plan} />
      </Suspense>
    );
  return null;
}

function Findings({ trade }: { trade: TradeId }) {
  const findings = usePlanner((p) => p.plan?.findings);
  const own = (findings ?? []).filter((f) => f.trade === trade).toSorted(worstFirst);
  const against = own.filter((f) => f.status !== 'ok');
  const holds = own.filter((f) => f.status === 'ok');
  if (own.length === 0) return null;
  return (
    <Sheet title="Findings" className="flush">
      <ul>
        {against.map((f) => (
          <li key={f.id}>
            <FindingLine finding={f} trade={false} />
          </li>
        ))}
      </ul>
      {holds.length > 0 && (
        <details className="fold hold-fold">
          <summary>
            <span className="fold-title">
              {holds.length} {holds.length === 1 ? 'holds' : 'hold'}
            </span>
          </summary>
          <ul>
            {holds.map((f) => (
              <li key={f.id}>
                <FindingLine finding={f} trade={false} />
              </li>
            ))}
          </ul>
        </details>
      )}
    </Sheet>
  );
}

function Part({ path }: { path: readonly string[] }) {
  const node = nodeAt(path)?.node;
  if (!node) return null;
  return (
    <Sheet title={`What you know: ${node.meta.label.toLowerCase()}`}>
      {node.meta.help && <p className="field-help">{node.meta.help}</p>}
      <FormNode node={node} path={path} depth={0} />
    </Sheet>
  );
}
