import type { DamperSetting } from '@kneewall/engine';
import { Button } from '../../look/Button.tsx';
import { useServices, useSession } from '../../services.ts';
import { damperEdits } from './damperEdits.ts';

/** Draws the dampers into the collars as a hand sets them, in one act, which one undo takes back. */
export function DrawDampers({ settings }: { settings: readonly DamperSetting[] }) {
  const { session } = useServices();
  const barred = useSession((s) => s.barred !== undefined);
  const sections = useSession((s) => s.project.routes?.ducts?.sections);
  const edits = damperEdits(settings, sections ?? {});
  if (edits.length === 0) return null;
  return (
    <>
      <Button disabled={barred} onClick={() => session.change(edits)}>
        Draw these dampers into the ducts
      </Button>
      <p className="field-help">Everything else is then worked out with them in place.</p>
    </>
  );
}
