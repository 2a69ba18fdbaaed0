import { parseArgs } from 'node:util';
import { cuttingBench } from './cutting.ts';
import { ductSizingBench } from './ductSizing.ts';
import { evaluateBench } from './evaluate.ts';
import { foresightBench } from './foresight.ts';
import { houseYearBench } from './houseYear.ts';
import { peakFlag, sayPeak } from './logPeak.ts';
import { logsBench } from './logs.ts';
import { type BenchRow, kept } from './measure.ts';
import { moistAirBench } from './moistAir.ts';
import { networkBench } from './network.ts';
import { passageBench } from './passage.ts';
import { planningBench } from './planning.ts';
import { planSetBench } from './planSet.ts';
import { powerMapsBench } from './powerMaps.ts';
import { reachMapsBench } from './reachMaps.ts';
import { readingBench } from './reading.ts';
import { wintersBench } from './winters.ts';

const benches: Readonly<Record<string, () => BenchRow[] | Promise<BenchRow[]>>> = {
  'moist-air': moistAirBench,
  network: networkBench,
  'duct-sizing': ductSizingBench,
  evaluate: evaluateBench,
  'house-year': houseYearBench,
  'power-maps': powerMapsBench,
  foresight: foresightBench,
  winters: wintersBench,
  planning: planningBench,
  'plan-set': planSetBench,
  cutting: cuttingBench,
  'reach-maps': reachMapsBench,
  passage: passageBench,
  reading: readingBench,
  logs: logsBench,
};

/** `npm run bench -- [NAME] [--json]`: ratios of one run; exit 1 only when a result is wrong. */
async function main(): Promise<void> {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { json: { type: 'boolean', default: false } },
  });
  const [name] = positionals;
  const rows: BenchRow[] = [];
  for (const [n, run] of Object.entries(benches)) if (name === undefined || n === name) rows.push(...(await run()));
  if (values.json) process.stdout.write(`${JSON.stringify(rows)}\n`);
  else
    for (const r of rows)
      console.log(
        `${r.holds ? 'holds' : 'short'}  ${r.name.padEnd(46)} ${r.ours.toFixed(2).padStart(8)} ${r.unit}  ratio ${r.ratio.toFixed(3).padStart(7)}  (${r.goal})`,
      );
  if (rows.length === 0 || !Number.isFinite(kept())) process.exitCode = 1;
}

if (process.argv[2] === peakFlag) sayPeak(process.argv[3] ?? '');
else await main();
