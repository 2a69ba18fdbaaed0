import type { WeatherYear } from '../../climate/weather/weatherYear.ts';
import { leakage } from '../ducted/ductworks.ts';
import type { Cost } from '../houseYear/measures.ts';
import { heatingEnergy, roomHours } from '../season/unitAnswers.ts';
import { unitRuns } from '../season/unitYear.ts';
import { costOfWay, roomUnits } from './costOfWay.ts';
import { type SectionChange, sectionChanges } from './firstChange.ts';
import { generatorHours } from './generatorHours.ts';
import { ducted, type RunWay, type WayId, wayIds } from './ways.ts';
import type { WaysInputs } from './waysJob.ts';

/** One way to go with the ducts: what flows, what the year takes (kWh), and the room that is cold longest. */
export type Way = {
  readonly id: WayId;
  /** m³/s at the blower, and share of it that leaks outside the rooms. */
  readonly flow: number;
  readonly leaks: number;
  readonly heat: number;
  /** Of that heat, what reaches the rooms: by the year with ducts that neither leak nor lose. */
  readonly delivered: number;
  readonly electricity: number;
  /** kWh by common practice, where no sheet or run says it. */
  readonly about?: { readonly low: number; readonly high: number };
  readonly coldest: { readonly room: string; readonly hours: number };
  /** Hours of the generator in the year, where there is one. */
  readonly generator?: number;
  /** What it costs beside the ducts as they are drawn; units in the rooms cost that in place of unit and ducts. */
  readonly cost: Cost;
  /** Small units, for the way without ducts. */
  readonly units?: number;
};

export type Ways = { readonly ways: readonly Way[]; readonly changes: readonly SectionChange[] };

/**
 * Small units in rooms beside one unit behind ducts, electricity for the same heat: no blower against ducts, but less
 * steady at low load. Source: `ways.rooms` (common practice).
 */
const roomUnitsTake = { low: 0.85, high: 1.15 } as const;

/** Runs the year with each way of making the ducts, and finds which section to change first. `tell` hears of rows. */
export function compareWays(inputs: WaysInputs, year: WeatherYear, tell: (done: number, total: number) => void): Ways {
  const { able, rows, run } = unitRuns(inputs, year);
  const units = roomUnits(inputs.house);
  const possible = wayIds.flatMap((id) => {
    const ducts = id === 'kneewall' ? undefined : ducted(id, inputs.ducts, inputs.best);
    return ducts ? [{ id: id as RunWay, ducts }] : [];
  });
  const ran = possible.map(({ id, ducts }, i): Omit<Way, 'delivered'> => {
    const record = run(ducts, (done) => tell(i * rows + done, possible.length * rows));
    const { heat, compressor, strips } = heatingEnergy(inputs, able, record);
    const electricity = compressor + strips;
    const [coldest] = Object.entries(roomHours(inputs, record))
      .map(([room, { cold }]) => ({ room, hours: cold }))
      .sort((a, b) => b.hours - a.hours || (a.room < b.room ? -1 : 1));
    return {
      id,
      flow: ducts.flows.flow,
      leaks: leakage(ducts),
      heat,
      electricity,
      coldest: coldest ?? { room: '', hours: 0 },
      cost: costOfWay(id, inputs.ducts, inputs.best, units),
      ...generatorHours(id, { ...inputs, ducts }, year),
      ...(id === 'rooms' ? { units, about: about(electricity) } : {}),
    };
  });
  const wanted = ran.find((w) => w.id === 'rooms')?.heat ?? 0;
  const all = [...ran, ...kneewall(inputs, ran, units)];
  const ways = wayIds.flatMap((id) =>
    all.filter((w) => w.id === id).map((w) => ({ ...w, delivered: w.heat > 0 ? Math.min(1, wanted / w.heat) : 0 })),
  );
  return { ways, changes: sectionChanges(inputs.ducts.model) };
}

const about = (electricity: number) => ({
  low: electricity * roomUnitsTake.low,
  high: electricity * roomUnitsTake.high,
});

/**
 * Behind a knee wall, where the house has one: as wrapped ducts in the attic while its slope lets the cold in, as ducts
 * inside once that is insulated and sealed, and half way between by common practice. Source: `ways.kneewall`.
 */
function kneewall({ house, ducts, best }: WaysInputs, ran: readonly Omit<Way, 'delivered'>[], units: number) {
  const [cold, warm] = [ran.find((w) => w.id === 'wrapped'), ran.find((w) => w.id === 'inside')];
  const there = house.shell.surfaces.some((x) => x.behind === 'attic' && x.part === 'walls');
  if (!there || !cold || !warm) return [];
  const between = (a: number, b: number): number => (a + b) / 2;
  const generator = warm.generator !== undefined && cold.generator !== undefined;
  return [
    {
      ...warm,
      id: 'kneewall' as const,
      leaks: between(cold.leaks, warm.leaks),
      heat: between(cold.heat, warm.heat),
      electricity: between(cold.electricity, warm.electricity),
      about: {
        low: Math.min(warm.electricity, cold.electricity),
        high: Math.max(warm.electricity, cold.electricity),
      },
      coldest: cold.coldest,
      ...(generator ? { generator: between(cold.generator ?? 0, warm.generator ?? 0) } : {}),
      cost: costOfWay('kneewall', ducts, best, units),
    },
  ];
}
