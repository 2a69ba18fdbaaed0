import type { Range } from '@kneewall/project';
import type { ArrayInputs, BatteryInputs, PowerInputs } from '../../../offgrid/result.ts';
import type { Change } from './change.ts';
import type { PowerHelpsInputs } from './helpsJob.ts';
import { steps, usualCosts, warmBox } from './sizes.ts';

const times = (by: number, { low, likely, high }: Range): Range => ({
  low: by * low,
  likely: by * likely,
  high: by * high,
});

/** What can be changed of sun, battery and generator. House and unit stay: their demand is the same while nothing is held back. */
export function powerChanges(inputs: PowerHelpsInputs): Change[] {
  const { power } = inputs;
  const to = (changed: Partial<PowerInputs>) =>
    ({ inputs: { ...inputs, power: { ...power, ...changed } }, powerOnly: true }) as const;
  return [...panels(inputs, to), ...batteries(inputs, to), ...engine(inputs, to)];
}

type To = (changed: Partial<PowerInputs>) => Pick<Change, 'inputs' | 'powerOnly'>;

/** One more kilowatt on each array's place; and on an open rack beside the first that faces best, at steeper tilts. */
function panels({ power: { arrays }, costs }: PowerHelpsInputs, to: To): Change[] {
  const cost = times(steps.panels / 1000, costs.panels);
  const more = (like: ArrayInputs, tilt: number): ArrayInputs => {
    const { rows: _own, ...rest } = like;
    return { ...rest, id: `${like.id}-more`, rated: steps.panels, tilt };
  };
  const best = [...arrays].sort((a, b) => b.rated - a.rated)[0];
  return [
    ...arrays.map(
      (a): Change => ({
        kind: 'panels',
        of: a.id,
        amount: a.tilt,
        cost,
        ...to({ arrays: [...arrays, more(a, a.tilt)] }),
      }),
    ),
    ...(best ? steps.tilts.filter((t) => t > best.tilt + 5) : []).map(
      (tilt): Change => ({
        kind: 'steep',
        of: best?.id ?? '',
        amount: tilt,
        cost,
        ...to({ arrays: [...arrays, ...(best ? [{ ...more(best, tilt), mounting: 'rack' as const }] : [])] }),
      }),
    ),
  ];
}

/** So many times the battery, with what it takes and gives and the box round it. */
export const timesBattery = (b: BatteryInputs, by: number): BatteryInputs => ({
  ...b,
  energy: b.energy * by,
  heater: b.heater * by,
  boxLoss: b.boxLoss * by,
  ...(b.chargeMost === undefined ? {} : { chargeMost: b.chargeMost * by }),
  ...(b.dischargeMost === undefined ? {} : { dischargeMost: b.dischargeMost * by }),
});

function batteries({ power: { battery }, costs }: PowerHelpsInputs, to: To): Change[] {
  const larger = timesBattery(battery, 1 + steps.battery / battery.energy);
  const cold = battery.place === 'shed' && battery.chemistry !== 'lead-acid';
  return [
    { kind: 'battery', cost: times(steps.battery, costs.battery), ...to({ battery: larger }) },
    ...(cold && battery.heater === 0
      ? [{ kind: 'warm-box' as const, cost: usualCosts.box, ...to({ battery: { ...battery, ...warmBox } }) }]
      : []),
    ...(cold
      ? [{ kind: 'indoors' as const, cost: usualCosts.indoors, ...to({ battery: { ...battery, place: 'heated' } }) }]
      : []),
  ];
}

/** A charger that takes all the generator gives, where it takes less; a larger generator with it, where it takes all. */
function engine({ power: { generator, charger }, costs }: PowerHelpsInputs, to: To): Change[] {
  if (!generator) return [];
  if (charger.most < 0.9 * generator.rated)
    return [{ kind: 'charger', cost: usualCosts.charger, ...to({ charger: { ...charger, most: generator.rated } }) }];
  const rated = generator.rated * steps.generator;
  return [
    {
      kind: 'generator',
      cost: times(rated / 1000, costs.generator),
      ...to({ generator: { ...generator, rated }, charger: { ...charger, most: charger.most * steps.generator } }),
    },
  ];
}
