import { methods, usualMeans } from '../../engine/src/commissioning/methods.ts';
import { faulty } from '../../engine/src/coupling/asBuilt/faulty.ts';
import { respond } from '../../engine/src/coupling/asBuilt/respond.ts';
import type { AsBuilt, Group, Response, ResponsesInputs } from '../../engine/src/coupling/asBuilt/system.ts';
import { type Chance, chanceFrom } from '../../engine/test/commissioning/chance.ts';
import { asReallyBuilt } from '../../engine/test/commissioning/planted.ts';

/** What is planted: the run that stepping on it in the attic crushed, and by how many times its loss grew. */
const planted = { kind: 'crushed-run', register: 'reg-bed-south', times: 12 } as const;
const seed = 20_280_115;

/** What an instrument at home shows: its unit, how many of it make one of ours, and its last digit. */
const shown: Readonly<Record<Group, { unit: string; per: number; plus?: number; digit: number }>> = {
  pressure: { unit: 'inH2O', per: 1 / 249.08891, digit: 0.005 },
  flow: { unit: 'cfm', per: 60 / 0.3048 ** 3, digit: 1 },
  temperature: { unit: 'F', per: 1.8, plus: 32, digit: 0.5 },
  power: { unit: 'W', per: 1, digit: 10 },
  water: { unit: 'mL', per: 1e6, digit: 5 },
  time: { unit: 's', per: 1, digit: 5 },
};

/** Value and how it was written down. */
type Read = readonly [value: number, as: string];
type ReadAll = Readonly<Record<string, Read>>;

/** Both visits of one house that is not the plan's model, read with the same instruments; the run is crushed between them. */
export function readings(first: ResponsesInputs, later: ResponsesInputs): { first: ReadAll; later: ReadAll } {
  const chance = chanceFrom(seed);
  const built = asReallyBuilt(first.system, chance);
  const { outdoor, returnAir } = built.state;
  const off = [outdoor - first.system.state.outdoor, returnAir - first.system.state.returnAir] as const;
  const { state } = later.system;
  const winter: AsBuilt = {
    ...built,
    state: { ...state, outdoor: state.outdoor + off[0], returnAir: state.returnAir + off[1] },
  };
  const fixed = new Map<string, number>();
  return {
    first: readOf(built, fixed, chance),
    later: readOf(faulty(winter, planted.kind, planted.times, planted.register), fixed, chance),
  };
}

function readOf(system: AsBuilt, fixed: Map<string, number>, chance: Chance): ReadAll {
  const one = ({ channel, value }: Response): readonly [string, Read] => {
    const means = usualMeans[channel.group];
    const method = methods[means];
    const shared = fixed.get(means) ?? chance.normal();
    fixed.set(means, shared);
    const random = method.random / Math.sqrt(channel.group === 'flow' ? 3 : 1);
    const share = method.fixed * shared + random * chance.normal();
    const seen = value + share * (channel.group === 'temperature' ? 1 : value);
    const { unit, per, plus = 0, digit } = shown[channel.group];
    const number = Math.round((seen * per + plus) / digit) * digit;
    const as = `${Number(number.toFixed(3))} ${unit}`;
    return [channel.id, [Number(((number - plus) / per).toPrecision(7)), as]];
  };
  return Object.fromEntries(
    respond(system)
      .filter((r) => r.channel.id !== 'commissioning/room-offset')
      .map(one),
  );
}
