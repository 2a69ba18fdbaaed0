import type { Plan, TradeResults } from '@kneewall/engine';
import { lazy, Suspense } from 'react';
import { Sheet } from '../../look/Sheet.tsx';
import { ChargeDays } from './ChargeDays.tsx';
import { DarkWeekChart } from './DarkWeekChart.tsx';
import { ForesightSheet } from './ForesightSheet.tsx';
import { OutcomeOr } from './OutcomeOr.tsx';
import { PowerYearSheet } from './PowerYearSheet.tsx';

/** Fetched when it is shown: the page before its first drawing has no room for it. */
const WintersSheets = lazy(() => import('./WintersSheets.tsx').then((m) => ({ default: m.WintersSheets })));

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
      <Suspense fallback={null}>
        <WintersSheets season={season} />
      </Suspense>
      <ForesightSheet outcome={season.foresight} />
    </>
  );
}
