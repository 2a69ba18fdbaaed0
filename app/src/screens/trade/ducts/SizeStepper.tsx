import { type DuctFact, sizeWords } from '@kneewall/documents';
import { type DuctShape, stockedNeighbours } from '@kneewall/engine';
import { Button } from '../../../look/Button.tsx';
import { useServices, useSession, useUnits } from '../../../services.ts';
import { boughtState, boughtWords, sizeChanges } from './sizeChanges.ts';

/** The next smaller and the next larger stocked size, each a single act that one undo takes back. */
export function SizeStepper({ duct }: { duct: DuctFact }) {
  const { session } = useServices();
  const barred = useSession((s) => s.barred !== undefined);
  const bought = useSession((s) => boughtState(s.project.items, duct.id));
  const units = useUnits();
  if (!duct.size) return <p>Enter its size below first.</p>;
  if (bought) return <p>{boughtWords(bought)}</p>;
  const { smaller, larger } = stockedNeighbours({ kind: duct.kind, ...duct.size });
  const step = (word: string, shape: DuctShape | undefined) => (
    <Button disabled={barred || !shape} onClick={() => shape && session.change(sizeChanges(duct.id, shape))}>
      {shape ? `${word}: ${sizeWords(shape, units)}` : `${word}: none in stock`}
    </Button>
  );
  return (
    <div className="duct-steps">
      {step('Smaller', smaller)}
      {step('Larger', larger)}
    </div>
  );
}
