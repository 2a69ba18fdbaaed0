import { writeFileSync } from 'node:fs';
import { ternLedgeAfter } from '../demos/src/ternLedgeAfter.ts';
import { speedLines } from '../engine/src/commissioning/logs/plannedPower.ts';
import type { ResponsesInputs } from '../engine/src/coupling/asBuilt/system.ts';
import type { EquipmentResult } from '../engine/src/equipment/result.ts';
import { evaluate, houseYearKind, type YearInputs } from '../engine/src/index.ts';
import type { LoadsResult } from '../engine/src/loads/result.ts';
import { demo } from '../engine/test/demos.ts';
import { winterLog } from './winterAfter/log.ts';
import { readings } from './winterAfter/readings.ts';

/** Writes what the demo "Tern Ledge, the winter after" holds of readings, and its log. All of it is invented by the engine. */
const demos = new URL('../demos/', import.meta.url);
const { plan, wanted } = evaluate(ternLedgeAfter(demo('tern-ledge'), { first: {}, later: {} }), {});
const [first, later] = wanted.flatMap((j) =>
  j.kind === 'commissioning/responses' ? [j.inputs as ResponsesInputs] : [],
);
const year = wanted.find((j) => j.kind === houseYearKind)?.inputs as YearInputs;
if (!first || !later) throw new Error('both visits have to be computed');
writeFileSync(new URL('winter-after-readings.json', demos), `${JSON.stringify(readings(first, later), null, 1)}\n`);

const { chosen, candidates } = plan.trades.equipment as EquipmentResult;
const unit = chosen.ok ? candidates[chosen.value]?.unit : undefined;
const { lossPerDegree } = plan.trades.loads as LoadsResult;
if (!lossPerDegree.ok) throw new Error('the plan has no loss');
const planned = lossPerDegree.value.likely;
const { csv, told } = winterLog(year, planned, speedLines(unit?.rows ?? []));
writeFileSync(new URL('files/winter-after-log.csv', demos), csv);
const [times, real] = told.map((x) => x.toPrecision(4));
process.stdout.write(
  `Log: ${csv.length} bytes; planned ${planned.toPrecision(4)} W/K, in the log ${real} W/K (everything lets through × ${times}).
`,
);
