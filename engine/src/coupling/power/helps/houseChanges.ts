import { costOf, done, type Measure } from '../../houseYear/measures.ts';
import type { Change } from './change.ts';
import type { PowerHelpsInputs } from './helpsJob.ts';
import { free, steps, usualCosts } from './sizes.ts';

/** What takes heat off the winter; vents are for summer. */
const winterly: readonly Extract<Measure, Change['kind']>[] = ['seal', 'ceiling', 'floor', 'panes', 'ducts'];

/** What changes the demand: what is done to the house and its ducts, how warm it is kept, a fire, another unit. */
export function houseChanges(inputs: PowerHelpsInputs): Change[] {
  const { house, ducts, power } = inputs;
  const { wanted } = house;
  const kept = (changed: Partial<typeof wanted>) => ({
    cost: free,
    inputs: { ...inputs, house: { ...house, wanted: { ...wanted, ...changed } } },
  });
  const stove = { heat: power.stove?.heat ?? steps.stove, lightBelow: steps.tended };
  return [
    { kind: 'cooler', ...kept({ heating: wanted.heating - steps.cooler }) },
    ...(wanted.setback === 0 ? [{ kind: 'setback' as const, ...kept({ setback: steps.setback }) }] : []),
    {
      kind: 'stove-days',
      cost: power.stove ? free : usualCosts.stove,
      // The fire takes the place of strips too: else they would make good what the slow unit leaves.
      inputs: { ...inputs, unit: { ...inputs.unit, strips: 0 }, power: { ...power, stove } },
    },
    ...winterly.flatMap((kind): Change[] => {
      const cost = costOf(kind, { house, ducts });
      return cost ? [{ kind, cost, inputs: { ...inputs, ...done[kind]({ house, ducts }) } }] : [];
    }),
    ...inputs.others.map(
      ({ id, unit, standing, speeds, coil, dearer }): Change => ({
        kind: 'unit',
        of: id,
        ...(dearer ? { cost: dearer } : {}),
        inputs: {
          ...inputs,
          unit,
          standing,
          ducts: { model: ducts.model, flows: ducts.flows, speeds, ...(coil ? { coil } : {}) },
        },
      }),
    ),
  ];
}
