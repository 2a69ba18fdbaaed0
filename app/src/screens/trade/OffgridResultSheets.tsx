import type { Plan, TradeResults } from '@kneewall/engine';
import { lazy, Suspense } from 'react';
import { Sheet } from '../../look/Sheet.tsx';
import { AgedBatterySheet } from './AgedBatterySheet.tsx';
import { ChargeDays } from './ChargeDays.tsx';
import { DarkWeekChart } from './DarkWeekChart.tsx';
import { ForesightSheet } from './ForesightSheet.tsx';
import { GridYearSheets } from './GridYearSheets.tsx';
import { OutcomeOr } from './OutcomeOr.tsx';
import { PowerHelpsSheet } from './PowerHelpsSheet.tsx';
import { PowerYearSheet } from './PowerYearSheet.tsx';
import { UnitsBesideSheet } from './UnitsBesideSheet.tsx';

/** Fetched when it is shown: the page before its first drawing has no room for it. */
const WintersSheets = lazy(() => import('./WintersSheets.tsx').then((m) => ({ default: m.WintersSheets })));

/** One's own power through the year: what it carries, its hardest week, and its battery. */
export default function OffgridResultSheets({ result, plan }: { result: TradeResults['offgrid']; plan: Plan }) {
  const { season } = plan;
  if (!result.own)
    return result.grid ? (
      <GridYearSheets outcome={plan.season.gridYear} />
    ) : (
      <Sheet title="Own power">
        <p>
          This house is on the grid. Say below that the electricity is your own to see whether sun and battery last; or
          enter what the grid charges, or a battery for outages.
        </p>
      </Sheet>
    );
  return (
    <>
      <PowerYearSheet outcome={season.power} />
      <PowerHelpsSheet
        outcome={season.powerHelps}
        own={result.inputs.ok && result.inputs.value.generator !== undefined}
      />
      <UnitsBesideSheet plan={plan} />
      <AgedBatterySheet result={result} season={season} />
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
      <Suspense fallback={null}>
        <WintersSheets season={season} />
      </Suspense>
      <ForesightSheet outcome={season.foresight} />
    </>
  );
}
