import type { WeatherYear } from '../../climate/weather/weatherYear.ts';
import { leakage } from '../ducted/ductworks.ts';
import type { Cost } from '../houseYear/measures.ts';
import { heatingEnergy, roomHours } from '../season/unitAnswers.ts';
import { unitRuns } from '../season/unitYear.ts';
import { costOfWay } from './costOfWay.ts';
import { type SectionChange, sectionChanges } from './firstChange.ts';
import { ducted, type WayId, wayIds } from './ways.ts';
import type { WaysInputs } from './waysJob.ts';

/** One way to go with the ducts: what flows, what the year takes (kWh), and the room that is cold longest. */
export type Way = {
  readonly id: WayId;
  /** m³/s at the blower, and share of it that leaks outside the rooms. */
  readonly flow: number;
  readonly leaks: number;
  readonly heat: number;
  readonly electricity: number;
  readonly coldest: { readonly room: string; readonly hours: number };
  /** What it costs beside the ducts as they are drawn. */
  readonly cost: Cost;
};

export type Ways = { readonly ways: readonly Way[]; readonly changes: readonly SectionChange[] };

/** Runs the year with each way of making the ducts, and finds which section to change first. `tell` hears of rows. */
export function compareWays(inputs: WaysInputs, year: WeatherYear, tell: (done: number, total: number) => void): Ways {
  const { able, rows, run } = unitRuns(inputs, year);
  const possible = wayIds.flatMap((id) => {
    const ducts = ducted(id, inputs.ducts, inputs.best);
    return ducts ? [{ id, ducts }] : [];
  });
  const ways = possible.map(({ id, ducts }, i): Way => {
    const record = run(ducts, (done) => tell(i * rows + done, possible.length * rows));
    const { heat, compressor, strips } = heatingEnergy(inputs, able, record);
    const [coldest] = Object.entries(roomHours(inputs, record))
      .map(([room, { cold }]) => ({ room, hours: cold }))
      .sort((a, b) => b.hours - a.hours || (a.room < b.room ? -1 : 1));
    return {
      id,
      flow: ducts.flows.flow,
      leaks: leakage(ducts),
      heat,
      electricity: compressor + strips,
      coldest: coldest ?? { room: '', hours: 0 },
      cost: costOfWay(id, inputs.ducts, inputs.best),
    };
  });
  return { ways, changes: sectionChanges(inputs.ducts.model) };
}
