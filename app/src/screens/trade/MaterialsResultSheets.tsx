import type { MaterialsResult, Plan } from '@kneewall/engine';
import { goTo } from '../../route/route.ts';
import '../buy/Buy.css';
import { Button } from '../../look/Button.tsx';
import { CostSheet } from '../buy/CostSheet.tsx';
import { DeliveriesSheet } from '../buy/DeliveriesSheet.tsx';
import { PricesImport } from '../buy/PricesImport.tsx';
import { SinceSheet, UnusedSheet } from '../buy/SinceSheet.tsx';

/** What all of it costs, what comes when, what changed since the order; the list itself has a page of its own. */
export default function MaterialsResultSheets({ result: { list }, plan }: { result: MaterialsResult; plan: Plan }) {
  return (
    <>
      <p>
        <Button onClick={() => goTo({ screen: 'buy' })}>Open the shopping list</Button>
      </p>
      {list.ok && <CostSheet cost={list.value.cost} />}
      <DeliveriesSheet plan={plan} />
      {list.ok && <SinceSheet list={list.value} />}
      {list.ok && <UnusedSheet list={list.value} />}
      <PricesImport />
    </>
  );
}
