import { type Finding, gatherByHoldPoint, type Mark } from '@kneewall/engine';
import { lazy, Suspense } from 'react';
import { usePlanner, useSession } from '../../services.ts';
import { HoldPointSheet } from './HoldPointSheet.tsx';
import { JobsSheet } from './JobsSheet.tsx';
import { Standing } from './Standing.tsx';
import './Home.css';

/** Comes once something has been changed. */
const MovedSheet = lazy(() => import('./MovedSheet.tsx').then((m) => ({ default: m.MovedSheet })));

/** The hold points with what stands against each, harm first. How much that is stands here before the words for it. */
export function Home() {
  const marks = usePlanner((p) => p.marks);
  const findings = usePlanner((p) => p.plan?.findings);
  const name = useSession((s) => s.project.about?.name);
  const changed = usePlanner((p) => p.movedBy !== undefined);
  return (
    <>
      <header className="screen-head">
        <h1>{name ?? 'A new project'}</h1>
        {marks && <Standing marks={marks} />}
        {marks && !findings && <p className="field-help">So far. Papers, what to buy, the work and readings follow.</p>}
      </header>
      <JobsSheet />
      {changed && (
        <Suspense fallback={null}>
          <MovedSheet />
        </Suspense>
      )}
      {marks && <HoldPoints marks={marks} findings={findings ?? []} />}
    </>
  );
}

function HoldPoints({ marks, findings }: { marks: readonly Mark[]; findings: readonly Finding[] }) {
  return (
    <ol className="hold-points" aria-label="Hold points">
      {gatherByHoldPoint(marks).map((view) => (
        <li key={view.holdPoint}>
          <HoldPointSheet view={view} findings={findings} />
        </li>
      ))}
    </ol>
  );
}
