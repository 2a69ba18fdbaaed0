import type { Plan } from '@kneewall/engine';
import { usePlanner, useSession } from '../../services.ts';
import { HoldPointSheet } from './HoldPointSheet.tsx';
import { JobsSheet } from './JobsSheet.tsx';
import { MovedSheet } from './MovedSheet.tsx';
import { Standing } from './Standing.tsx';
import './Home.css';

/** The hold points with what stands against each, harm first. */
export function Home() {
  const plan = usePlanner((p) => p.plan);
  const name = useSession((s) => s.project.about?.name);
  return (
    <>
      <header className="screen-head">
        <h1>{name ?? 'A new project'}</h1>
        {plan && <Standing plan={plan} />}
      </header>
      <JobsSheet />
      <MovedSheet />
      {plan && <HoldPoints plan={plan} />}
    </>
  );
}

function HoldPoints({ plan }: { plan: Plan }) {
  return (
    <ol className="hold-points" aria-label="Hold points">
      {plan.holdPoints.map((view) => (
        <li key={view.holdPoint}>
          <HoldPointSheet view={view} plan={plan} />
        </li>
      ))}
    </ol>
  );
}
