import { writeFileSync } from 'node:fs';
import { ternLedgeAfter } from '../demos/src/ternLedgeAfter.ts';
import type { ResponsesInputs } from '../engine/src/coupling/asBuilt/system.ts';
import { expectedUnit } from '../engine/src/coupling/logFit/expectedUnit.ts';
import type { EquipmentResult } from '../engine/src/equipment/result.ts';
import { evaluate, houseYearKind, type YearInputs } from '../engine/src/index.ts';
import { scenario } from '../engine/src/plan/scenario.ts';
import { demo } from '../engine/test/demos.ts';
import { resolveProject } from '../project/src/index.ts';
import { winterLog } from './winterAfter/log.ts';
import { readings } from './winterAfter/readings.ts';

/** Writes what the demo "Tern Ledge, the winter after" holds of readings, and its log. All of it is invented by the engine. */
const demos = new URL('../demos/', import.meta.url);
const project = ternLedgeAfter(demo('tern-ledge'), { first: {}, later: {} });
const { plan, wanted } = evaluate(project, {});
const [first, later] = wanted.flatMap((j) =>
  j.kind === 'commissioning/responses' ? [j.inputs as ResponsesInputs] : [],
);
const year = wanted.find((j) => j.kind === houseYearKind)?.inputs as YearInputs;
if (!first || !later) throw new Error('both visits have to be computed');
writeFileSync(new URL('winter-after-readings.json', demos), `${JSON.stringify(readings(first, later), null, 1)}\n`);

const { chosen, candidates } = plan.trades.equipment as EquipmentResult;
const unit = chosen.ok ? candidates[chosen.value]?.unit : undefined;
const electrics = unit && resolveProject(project).candidates[unit.id]?.electrics;
if (!electrics) throw new Error('the plan has no unit');
const standby = scenario().of(electrics.standby);
const { csv, told } = winterLog(year, expectedUnit({ model: unit, pressure: year.house.pressure, standby }));
writeFileSync(new URL('files/winter-after-log.csv', demos), csv);
const [times, real, plain] = told.map((x) => x.toPrecision(4));
process.stdout.write(
  `Log: ${csv.length} bytes; in that weather the plan loses ${plain} W/K, the house of the log ${real} W/K (everything lets through × ${times}).
`,
);
