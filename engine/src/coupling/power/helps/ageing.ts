import type { BatteryInputs } from '../../../offgrid/result.ts';
import type { Change } from './change.ts';
import type { PowerHelpsInputs } from './helpsJob.ts';
import { timesBattery } from './powerChanges.ts';

/** Shares of its energy that an aged battery holds. */
const agedShares = [0.9, 0.8, 0.7, 0.6] as const;

/** Loss in and out grows with resistance: by half when a fifth of the energy is gone. Source: `offgrid.fade`. */
const lossGrows = 2.5;

/** The battery when so much of its energy is left. Its box and heater stay as they are. */
export function agedBattery(battery: BatteryInputs, share: number): BatteryInputs {
  const { boxLoss, heater } = battery;
  const less = timesBattery(battery, share);
  const lost = (1 - battery.roundTrip) * (1 + lossGrows * (1 - share));
  return { ...less, boxLoss, heater, roundTrip: Math.max(0.1, 1 - lost) };
}

/** The year with the battery at each age. */
export const agedChanges = (inputs: PowerHelpsInputs): Change[] =>
  agedShares.map((share) => ({
    kind: 'aged',
    amount: share,
    powerOnly: true,
    inputs: { ...inputs, power: { ...inputs.power, battery: agedBattery(inputs.power.battery, share) } },
  }));
