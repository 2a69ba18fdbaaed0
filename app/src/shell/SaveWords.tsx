import { useSession } from '../services.ts';
import './SaveWords.css';

/** The save state in words. Nothing else on the screen claims that anything is saved. */
export function SaveWords() {
  const waiting = useSession((s) => s.saving.waiting.length);
  const failing = useSession((s) => s.saving.failing);
  const full = useSession((s) => s.saving.full);
  const origin = useSession((s) => s.origin.kind);
  const onlyHere = useSession((s) => s.onlyHere);
  const opening = useSession((s) => s.generation === 0);
  if (opening) return <span className="save">Opening</span>;
  if (waiting > 0)
    return (
      <span className={`save not-saved ${failing ? 'failing' : ''}`}>
        Not saved: {waiting} {waiting === 1 ? 'change' : 'changes'}
        {full && '. The device is full: save a file'}
        {failing && !full && '. Trying again'}
      </span>
    );
  if (origin === 'demo') return <span className="save">Demo, read-only</span>;
  if (origin === 'file') return <span className="save">From a file, no changes</span>;
  if (origin === 'new') return <span className="save">New, nothing entered</span>;
  return (
    <span className="save saved">
      On this device
      <span className="save-count">
        : {onlyHere} {onlyHere === 1 ? 'change' : 'changes'}
      </span>
    </span>
  );
}
