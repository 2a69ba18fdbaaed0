import type { TradeResults } from '@kneewall/engine';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import { MonthsChart } from './MonthsChart.tsx';
import { OutcomeOr } from './OutcomeOr.tsx';
import { YearFactsSheet } from './YearFactsSheet.tsx';

type Climate = TradeResults['climate'];

const basisWords: Readonly<Record<Climate['basis'], string>> = {
  assumed: 'Assumed from your answers; a weather file or a table of normals would say more.',
  normals: 'From the monthly normals entered.',
  'weather-file': 'From the imported weather year.',
};

/** The night and the day the plan is made for, and the months between. */
export function ClimateResultSheets({ result }: { result: Climate }) {
  return (
    <>
      <Sheet title="The weather the plan is made for">
        <p className="field-help">{basisWords[result.basis]}</p>
        <OutcomeOr outcome={result.night} what="The cold night">
          {(night) => (
            <p className="lead">
              The heating has to hold a night of <Quantity value={night.outdoor.likely} kind="temperature" />, with wind
              of <Quantity value={night.wind.likely} kind="velocity" unit={{ us: 'mph' }} significant={2} />.
            </p>
          )}
        </OutcomeOr>
        <OutcomeOr outcome={result.day} what="The hot afternoon">
          {(day) => (
            <p>
              The cooling has to hold an afternoon of <Quantity value={day.outdoor.likely} kind="temperature" />, after
              a night <Quantity value={day.dailyRange.likely} kind="temperature-difference" /> cooler.
            </p>
          )}
        </OutcomeOr>
        {result.months.ok && <MonthsChart months={result.months.value} />}
      </Sheet>
      {result.facts.ok && <YearFactsSheet facts={result.facts.value} />}
    </>
  );
}
