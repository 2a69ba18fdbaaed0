import type { Plan, TradeResults } from '@kneewall/engine';
import { Sheet } from '../../look/Sheet.tsx';
import { ChargeDays } from './ChargeDays.tsx';
import { DarkWeekChart } from './DarkWeekChart.tsx';
import { ForesightSheet } from './ForesightSheet.tsx';
import { OutcomeOr } from './OutcomeOr.tsx';
import { PowerSizesTable } from './PowerSizesTable.tsx';
import { PowerYearSheet } from './PowerYearSheet.tsx';

/** One's own power through the year: what it carries, its hardest week, and its battery. */
export function OffgridResultSheets({ result, season }: { result: TradeResults['offgrid']; season: Plan['season'] }) {
  if (!result.own)
    return (
      <Sheet title="Own power">
        <p>
          This house is on the grid. Say below that the electricity is your own to see whether sun and battery last.
        </p>
      </Sheet>
    );
  return (
    <>
      <PowerYearSheet outcome={season.power} />
      <Sheet title="The darkest week">
        <OutcomeOr outcome={season.power} what="The darkest week">
          {(year) => <DarkWeekChart week={year.darkWeek} />}
        </OutcomeOr>
      </Sheet>
      <Sheet title="The battery through the year">
        <OutcomeOr outcome={season.power} what="The battery’s year">
          {(year) => <ChargeDays charge={year.charge} cell={year.cell} />}
        </OutcomeOr>
      </Sheet>
      <Sheet title="Other sizes">
        <OutcomeOr outcome={season.power} what="What other sizes would do">
          {(year) => <PowerSizesTable sizes={year.sizes} />}
        </OutcomeOr>
      </Sheet>
      <ForesightSheet outcome={season.foresight} />
    </>
  );
}
