import { type DuctFact, sizeWords } from '@kneewall/documents';
import { type DuctShape, stockedNeighbours } from '@kneewall/engine';
import { Button } from '../../../look/Button.tsx';
import { useServices, useSession, useUnits } from '../../../services.ts';

const bought: readonly string[] = ['ordered', 'arrived', 'fitted'];

/** The next smaller and the next larger stocked size, each a single act that one undo takes back. */
export function SizeStepper({ duct }: { duct: DuctFact }) {
  const { session } = useServices();
  const barred = useSession((s) => s.barred !== undefined);
  const items = useSession((s) => s.project.items);
  const units = useUnits();
  const isBought = Object.values(items ?? {}).some(
    (item) => item.of === `routes.ducts.sections.${duct.id}` && bought.includes(item.state ?? ''),
  );
  if (!duct.size) return <p>Enter its size below first.</p>;
  if (isBought) return <p>It is bought: it is judged as it is. What is wrong in its size is corrected below.</p>;
  const { smaller, larger } = stockedNeighbours({ kind: duct.kind, ...duct.size });
  const step = (word: string, shape: DuctShape | undefined) => (
    <Button disabled={barred || !shape} onClick={() => shape && session.change(changesTo(duct.id, shape))}>
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

/** A size as it goes into the document: a diameter, or width and height, and never both. */
function changesTo(id: string, shape: DuctShape) {
  const at = (field: string, value: number | undefined) => ({
    path: ['routes', 'ducts', 'sections', id, field],
    after: value === undefined ? undefined : { value, known: 'estimated' },
  });
  const [diameter, width, height] =
    'diameter' in shape ? [shape.diameter, undefined, undefined] : [undefined, shape.width, shape.height];
  return [at('diameter', diameter), at('width', width), at('height', height)];
}
