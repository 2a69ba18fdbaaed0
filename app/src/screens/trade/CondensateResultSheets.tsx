import { trapOf, trapSvg } from '@kneewall/documents';
import type { Plan, TradeResults } from '@kneewall/engine';
import { handOver } from '../../files/saveFile.ts';
import { Button } from '../../look/Button.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import { useSession, useUnits } from '../../services.ts';
import { DrainSheet } from './DrainSheet.tsx';
import { OutcomeOr } from './OutcomeOr.tsx';
import { TrapDrawing } from './TrapDrawing.tsx';

type Condensate = TradeResults['condensate'];

/** The trap to build, to look at and to print at full size. */
export function CondensateResultSheets({ result, plan }: { result: Condensate; plan: Plan }) {
  const project = useSession((s) => s.project);
  const units = useUnits();
  const found = trapOf(plan, project);
  return (
    <>
      <Sheet title="The trap">
        <OutcomeOr outcome={result.trap} what="The trap">
          {({ drop, seal }) => (
            <>
              <p className="lead">
                <Quantity value={drop} kind="length" /> from the cabinet’s outlet down to the trap’s own, and a seal of{' '}
                <Quantity value={seal} kind="length" /> below that.
              </p>
              {found && <TrapDrawing {...found} />}
              <p>
                Both are measured at the undersides of the pipes; the seal ends at the upper side of the lowest one.
                They are for the most that the blower {result.pulls ? 'pulls' : 'pushes'} at the drain, a loaded filter
                and a wet coil counted. The maker’s own drawing stands above this one.
              </p>
              <p>
                <Button onClick={() => handOver('trap.svg', trapSvg(plan, project, units) ?? '', 'image/svg+xml')}>
                  Save it at full size
                </Button>
              </p>
            </>
          )}
        </OutcomeOr>
      </Sheet>
      <DrainSheet result={result} plan={plan} />
    </>
  );
}
