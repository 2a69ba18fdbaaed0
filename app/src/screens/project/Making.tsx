import type { PrintProgress } from '@kneewall/documents/planSet';
import { Button } from '../../look/Button.tsx';

/** How far a plan set is that is being made, and a way out of it. Only that it is made is spoken: its pages follow each other fast. */
export function Making({ progress, stop }: { progress: PrintProgress | undefined; stop: () => void }) {
  return (
    <div className="buttons">
      <progress
        aria-label="The plan set"
        {...(progress ? { value: shareOf(progress), max: 1, 'aria-valuetext': said(progress) } : {})}
      />
      <span aria-hidden="true">{said(progress)}</span>
      <Button onClick={stop}>Stop</Button>
    </div>
  );
}

/** Laying the pages out takes about as long as drawing them. */
const shareOf = ({ step, done, total }: PrintProgress): number =>
  (step === 'drawing' ? 0.5 : 0) + (0.5 * done) / Math.max(1, total);

function said(progress: PrintProgress | undefined): string {
  if (!progress) return 'Gathering what goes in';
  const { step, done, total, part } = progress;
  if (step === 'laying') return 'Laying out the pages';
  return `Page ${done + 1} of ${total}${part === '' ? '' : `: ${part}`}`;
}
