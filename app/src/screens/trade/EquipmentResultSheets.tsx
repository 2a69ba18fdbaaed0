import type { Plan, TradeResults } from '@kneewall/engine';
import { Sheet } from '../../look/Sheet.tsx';
import { CandidateCard } from './CandidateCard.tsx';
import { UnitYearSheet } from './UnitYearSheet.tsx';

/** The units side by side, best first. */
export function EquipmentResultSheets({
  result,
  season,
}: {
  result: TradeResults['equipment'];
  season: Plan['season'];
}) {
  const order = result.ranking.map((r) => r.id);
  const units = Object.values(result.candidates).toSorted((a, b) => order.indexOf(a.id) - order.indexOf(b.id));
  if (units.length === 0)
    return (
      <Sheet title="Units">
        <p>No unit is entered yet. Add one below from its data sheet, and it is held against this house.</p>
      </Sheet>
    );
  return (
    <>
      <ul className="candidates" aria-label="Units side by side">
        {units.map((unit) => (
          <li key={unit.id}>
            <CandidateCard unit={unit} all={units.map((u) => u.id)} />
          </li>
        ))}
      </ul>
      <UnitYearSheet outcome={season.unitYear} />
    </>
  );
}
