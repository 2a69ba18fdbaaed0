import { usePlanner, useServices, useSession } from '../services.ts';
import { SaveWords } from './SaveWords.tsx';
import { ViewSwitches } from './ViewSwitches.tsx';
import './Header.css';

/** Which project, whether it is saved, and the way back. */
export function Header() {
  const { session } = useServices();
  const name = useSession((s) => s.project.about?.name ?? 'New project');
  const canUndo = useSession((s) => s.history.undo.length > 0 && s.barred === undefined);
  const canRedo = useSession((s) => s.history.redo.length > 0 && s.barred === undefined);
  return (
    <header className="top">
      <div className="top-bar">
        <div className="top-project">
          <span className="top-name">{name}</span>
          <span className="top-state">
            <SaveWords />
            <Computing />
          </span>
        </div>
        <div className="top-tools">
          <button type="button" className="tool" onClick={session.undo} disabled={!canUndo}>
            <Arrow d="M9 5 4 10l5 5M4 10h8a5 5 0 0 1 0 10h-1" />
            <span>Undo</span>
          </button>
          <button type="button" className="tool" onClick={session.redo} disabled={!canRedo}>
            <Arrow d="m15 5 5 5-5 5M20 10h-8a5 5 0 0 0 0 10h1" />
            <span>Redo</span>
          </button>
          <div className="top-view">
            <ViewSwitches />
          </div>
        </div>
      </div>
      <div className="ruler" aria-hidden="true" />
    </header>
  );
}

function Computing() {
  const computing = usePlanner((p) => p.computing);
  const failed = usePlanner((p) => p.failed);
  if (failed) return <span className="computing">The plan could not be computed</span>;
  return computing ? <span className="computing">computing</span> : null;
}

function Arrow({ d }: { d: string }) {
  return (
    <svg viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      <path d={d} fill="none" stroke="currentColor" strokeWidth="2.2" strokeLinecap="round" strokeLinejoin="round" />
    </svg>
  );
}
