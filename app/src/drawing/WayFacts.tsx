import { bendsOfWay, type Entered, lengthOfWay, type Project, printQuantity } from '@kneewall/project';
import { useField } from '../form/useField.ts';
import { Button } from '../look/Button.tsx';
import { Quantity } from '../quantity/Quantity.tsx';
import { useUnits } from '../services.ts';
import { bendWords, wayOf } from './drawnWords.ts';
import type { DrawnPoints } from './usePoints.ts';

type Section = NonNullable<NonNullable<NonNullable<NonNullable<Project['routes']>['ducts']>['sections']>[string]>;

/** A way's own length and bends beside those entered, of which the entered ones count. */
export function WayFacts({ path, drawn }: { path: readonly string[]; drawn: DrawnPoints }) {
  const at = path.slice(0, -1);
  const length = useField([...at, 'length']);
  const fittings = useField([...at, 'fittings']).value as Section['fittings'];
  const units = useUnits();
  const way = wayOf(drawn.points);
  if (way.length < 2) return null;
  const long = lengthOfWay(way);
  const bends = bendsOfWay(way);
  const entered = length.value as Entered | undefined;
  const printed = printQuantity(long, 'length', units);
  const take = () => length.change({ value: Math.round(long * 1e4) / 1e4, known: 'estimated', as: printed });
  const likely = typeof entered?.value === 'object' ? entered.value.likely : entered?.value;
  const isSame = likely !== undefined && printQuantity(likely, 'length', units) === printed;
  return (
    <div className="drawing-facts">
      <p>
        Drawn <strong>{printed}</strong>, entered{' '}
        {likely === undefined ? 'no length' : <Quantity value={likely} kind="length" />}. The entered length counts.
      </p>
      <p>
        Drawn <strong>{bendWords(bends.length)}</strong>
        {bends.length > 0 && <> that turn by {Math.round(bends.reduce((a, b) => a + b, 0))}° in all</>}, entered{' '}
        {bendWords(bendsEntered(fittings))} among its fittings. The fittings count.
      </p>
      {!isSame && (
        <Button disabled={length.barred} onClick={take}>
          Use {printed} as its length
        </Button>
      )}
    </div>
  );
}

/** Elbows and bends among a section's fittings. */
const bendsEntered = (fittings: Section['fittings']): number =>
  Object.values(fittings ?? {})
    .filter(({ kind = 'elbow-round' }) => /^(elbow|bend)-/.test(kind))
    .reduce((sum, { count }) => sum + (typeof count?.value === 'object' ? count.value.likely : (count?.value ?? 1)), 0);
