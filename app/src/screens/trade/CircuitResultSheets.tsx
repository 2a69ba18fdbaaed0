import { oneLineSvg } from '@kneewall/documents';
import type { TradeResults } from '@kneewall/engine';
import { sizeName } from '@kneewall/engine';
import { handOver } from '../../files/saveFile.ts';
import { Button } from '../../look/Button.tsx';
import { FoldedTable } from '../../look/FoldedTable.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import { usePlanner, useSession, useUnits } from '../../services.ts';
import { OutcomeOr } from './OutcomeOr.tsx';
import { WireLadder } from './WireLadder.tsx';

type Circuit = TradeResults['circuit'];
type Run = Circuit['runs'][number];

const toWords: Readonly<Record<Run['id'], string>> = { outdoor: 'outdoor unit', handler: 'air handler' };

/** The wires from the panel or the inverter to the units: a ladder to look at, and the same in a table. */
export function CircuitResultSheets({ result }: { result: Circuit }) {
  return (
    <Sheet title="The wires">
      <p className="caution">
        Electricity can kill. These sizes help to plan and to buy. The nameplate, the local code and a licensed
        electrician stand above them; nothing here is an approval.
      </p>
      <OutcomeOr outcome={result.unit} what="The wires">
        {({ name }) => (
          <>
            <p className="lead">
              For “{name}”, at <Quantity value={result.voltage} kind="voltage" />.
            </p>
            <WireLadder result={result} />
            <InNumbers result={result} />
            <SaveDrawing />
          </>
        )}
      </OutcomeOr>
    </Sheet>
  );
}

/** The sheet that an electrician or an inspector can be handed. */
function SaveDrawing() {
  const project = useSession((s) => s.project);
  const plan = usePlanner((p) => p.plan);
  const units = useUnits();
  const svg = plan && project ? oneLineSvg(plan, project, units) : undefined;
  if (svg === undefined) return null;
  return (
    <p>
      <Button onClick={() => handOver('supply.svg', svg, 'image/svg+xml')}>Save the one-line drawing</Button>
    </p>
  );
}

function InNumbers({ result }: { result: Circuit }) {
  const from = result.supply === 'own' ? 'Inverter' : 'Panel';
  return (
    <FoldedTable
      title="The wires in numbers"
      columns={['From and to', 'Conductors', 'Ground', 'Breaker or fuse', 'One way', 'Lost']}
    >
      {result.runs.map((run) => (
        <tr key={run.id}>
          <th scope="row">
            {from} to {toWords[run.id]}
          </th>
          <td>{run.conductor.ok ? `${sizeName(run.conductor.value.area)} ${run.metal}` : 'unknown'}</td>
          <td>{run.ground.ok ? sizeName(run.ground.value.area) : 'unknown'}</td>
          <td>{run.protection.ok ? <Quantity value={run.protection.value.size} kind="current" /> : 'unknown'}</td>
          <td>{run.length.ok ? <Quantity value={run.length.value.likely} kind="length" /> : 'unknown'}</td>
          <td>{run.drop.ok ? <Lost drop={run.drop.value} /> : 'unknown'}</td>
        </tr>
      ))}
      {result.between && <BetweenRow between={result.between} />}
    </FoldedTable>
  );
}

type Drop = Extract<Run['drop'], { ok: true }>['value'];

function Lost({ drop }: { drop: Drop }) {
  return (
    <>
      <Quantity value={drop.volts.likely} kind="voltage-difference" />,{' '}
      <Quantity value={drop.share.likely} kind="fraction" />
    </>
  );
}

function BetweenRow({ between }: { between: NonNullable<Circuit['between']> }) {
  return (
    <tr>
      <th scope="row">Outdoor unit to air handler</th>
      <td>
        {between.wanted.ok ? `${between.wanted.value}, the ground among them` : 'unknown'}
        {between.size !== undefined && `, ${sizeName(between.size)}`}
        {between.screened && ', screened'}
      </td>
      <td>in the cable</td>
      <td>as the outdoor unit</td>
      <td>{between.length.ok ? <Quantity value={between.length.value.likely} kind="length" /> : 'unknown'}</td>
      <td>not counted</td>
    </tr>
  );
}
