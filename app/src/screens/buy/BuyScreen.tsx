import { materialsCsv, materialsJson } from '@kneewall/documents';
import { handOver } from '../../files/saveFile.ts';
import { Button } from '../../look/Button.tsx';
import { usePlanner, useUnits } from '../../services.ts';
import { BuyList } from './BuyList.tsx';
import './Buy.css';
import { CostSheet } from './CostSheet.tsx';
import { DeliveriesSheet } from './DeliveriesSheet.tsx';
import { ForgottenSheet, ToolsSheet } from './ExtraSheets.tsx';
import { PricesImport } from './PricesImport.tsx';
import { SinceSheet, UnusedSheet } from './SinceSheet.tsx';

/** The one list of what must be bought: whole packs, in order, with cost, deliveries, tools and what is easily forgotten. */
export function BuyScreen() {
  const plan = usePlanner((p) => p.plan);
  const units = useUnits();
  const list = plan?.trades.materials?.list;
  return (
    <>
      <header className="screen-head">
        <h1>What to buy</h1>
        <p className="lead">
          Whole packs, with waste allowed and what you have taken off. Look at what stands against “Order” before
          anything is paid for.
        </p>
      </header>
      {!list?.ok && <p>Nothing to buy follows from the plan yet.</p>}
      {plan && list?.ok && (
        <>
          <div className="buttons">
            <Button onClick={() => handOver('what-to-buy.csv', materialsCsv(plan, units), 'text/csv')}>
              Save as a table (CSV)
            </Button>
            <Button
              look="quiet"
              onClick={() => handOver('what-to-buy.json', materialsJson(plan) ?? '', 'application/json')}
            >
              Save as JSON
            </Button>
          </div>
          <CostSheet cost={list.value.cost} />
          <DeliveriesSheet plan={plan} />
          <SinceSheet list={list.value} />
          <UnusedSheet list={list.value} />
          <BuyList list={list.value} />
          <ToolsSheet list={list.value} />
          <ForgottenSheet list={list.value} />
        </>
      )}
      <PricesImport />
    </>
  );
}
