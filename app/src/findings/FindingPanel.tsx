import { useEffect, useRef } from 'react';
import { Button } from '../look/Button.tsx';
import { goTo, type Route, useRoute } from '../route/route.ts';
import { usePlanner } from '../services.ts';
import { FindingFacts } from './FindingFacts.tsx';
import { WorkingSteps } from './WorkingSteps.tsx';
import './FindingPanel.css';

const without = ({ finding: _finding, ...rest }: Route): Route => rest as Route;

/** The finding named in the address, opened over the screen with the whole of its working. */
export function FindingPanel() {
  const route = useRoute();
  const plan = usePlanner((p) => p.plan);
  const dialog = useRef<HTMLDialogElement>(null);
  const finding = plan?.findings.find((f) => f.id === route.finding);
  const shown = finding !== undefined;
  useEffect(() => {
    if (shown && !dialog.current?.open) dialog.current?.showModal();
  }, [shown]);
  if (!plan || !finding) return null;
  const close = () => goTo(without(route));
  return (
    <dialog ref={dialog} className="finding-panel" aria-labelledby="finding-title" onClose={close}>
      <div className="finding-panel-bar">
        <Button onClick={() => dialog.current?.close()}>Close</Button>
      </div>
      <div className="finding-panel-body">
        <FindingFacts finding={finding} sources={plan.sources} />
        <WorkingSteps steps={plan.workings[finding.working] ?? []} sources={plan.sources} />
      </div>
    </dialog>
  );
}
