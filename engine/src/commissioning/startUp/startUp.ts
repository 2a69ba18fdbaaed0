import { attempt, type Outcome, required, unresolved } from '../../plan/outcome.ts';
import type { Input } from '../asBuilt.ts';
import type { Visit } from '../result.ts';
import { type Upkeep, upkeepFrom } from './upkeep.ts';

/** What the first start is made of, and whether its weather lets heating be proved. */
export type StartUp = {
  /** A unit is chosen: without one there is nothing to start. */
  readonly unit: boolean;
  /** The house makes its own power. */
  readonly ownPower: boolean;
  readonly heating: Outcome<HeatingTest>;
  /** Empty where no free time with a day is entered: nothing has a day then. */
  readonly upkeep: readonly Upkeep[];
};

/** °C. `below`: outdoors below which the unit heats steadily enough to be read. */
export type HeatingTest = { readonly below: number } & (HeatingRead | HeatingToCome);

/** It was read already: at the coldest visit in heating. */
type HeatingRead = { readonly read: { readonly outdoor: number; readonly day: string } };

type HeatingToCome = {
  readonly read?: never;
  /** The mornings in the month of the last free time entered, 1 to 12. */
  readonly month: number;
  readonly mornings: number;
  /** The next month, in the order of the year, whose mornings are cold enough; absent where none is. */
  readonly next?: number;
};

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
