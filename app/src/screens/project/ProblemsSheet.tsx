import { Sheet } from '../../look/Sheet.tsx';
import { usePlanner } from '../../services.ts';
import { ProblemList } from './ProblemList.tsx';

/** What the project holds that is kept and yet worth a second look. */
export function ProblemsSheet() {
  const problems = usePlanner((p) => p.plan?.problems) ?? [];
  if (problems.length === 0) return null;
  return (
    <Sheet title="Kept, and worth a second look">
      <ProblemList problems={problems} />
    </Sheet>
  );
}
