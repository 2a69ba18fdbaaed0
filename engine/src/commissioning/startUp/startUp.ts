import { attempt, required, unresolved } from '../../plan/outcome.ts';
import type { Input } from '../asBuilt.ts';
import type { Visit } from '../result.ts';
import type { HeatingRead, HeatingTest, StartUp } from './result.ts';
import { type Upkeep, upkeepFrom } from './upkeep.ts';

/** K below the balance temperature at which a unit runs long enough to be read. Source: `commissioning.heating-test`. */
const belowBalance = 5;

/** What the first start has to do with. Needs free time, the climate's months and the house's balance temperature. */
export const startUpOf = (input: Input, visits: readonly Visit[]): StartUp => ({
  unit: input.upstream.equipment.chosen.ok,
  ownPower: 'choice' in input.project.power.supply && input.project.power.supply.choice === 'own',
  heating: attempt(() => heatingTest(input, visits)),
  upkeep: upkeepOf(input),
});

/** The last day on which anybody has time for the work. */
const lastDay = ({ project }: Input): string | undefined =>
  Object.values(project.work.windows)
    .flatMap((w) => (w.day === undefined ? [] : [w.day]))
    .toSorted()
    .at(-1);

function upkeepOf(input: Input): readonly Upkeep[] {
  const last = lastDay(input);
  const { months } = input.upstream.climate;
  return last === undefined ? [] : upkeepFrom(last, months.ok ? months.value : []);
}

/** The visit in heating at which it was coldest outdoors, of those that count and have a day. */
function coldestRead(visits: readonly Visit[]): HeatingRead['read'] | undefined {
  return visits
    .flatMap(({ state, aside, taken, day }) =>
      state.ok && state.value.mode === 'heating' && !aside && taken.length > 0 && day !== undefined
        ? [{ outdoor: state.value.outdoor, day }]
        : [],
    )
    .toSorted((a, b) => a.outdoor - b.outdoor)[0];
}

function heatingTest(input: Input, visits: readonly Visit[]): HeatingTest {
  const { upstream } = input;
  const below = required(upstream.loads.balanceTemperature) - belowBalance;
  const read = coldestRead(visits);
  if (read && read.outdoor <= below) return { below, read };
  // What was begun without free time entered is proved after the last visit.
  const last =
    lastDay(input) ??
    visits
      .flatMap((v) => v.day ?? [])
      .toSorted()
      .at(-1) ??
    unresolved('missing', 'work.windows');
  const months = required(upstream.climate.months);
  const morningsOf = (month: number): number => {
    const m = months.find((x) => x.month === month) ?? unresolved('missing', 'site.climate');
    return m.mean - m.dailyRange / 2;
  };
  const month = Number(last.slice(5, 7));
  const later = Array.from({ length: 12 }, (_, i) => ((month + i) % 12) + 1);
  const next = later.find((m) => morningsOf(m) <= below);
  return { month, mornings: morningsOf(month), below, ...(next === undefined ? {} : { next }) };
}
