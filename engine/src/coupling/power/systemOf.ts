import type { BatteryInputs, PowerInputs } from '../../offgrid/result.ts';
import {
  byDegree,
  capacityShare,
  coldLead,
  coldLithium,
  lithiumCharge,
  lithiumDischarge,
  type PowerSystem,
} from '../../physics/power/index.ts';

/** J/K of cells for each kWh. Source: `offgrid.cell-mass` (common practice). */
const heatOfCells = { 'lithium-iron-phosphate': 8_300, 'lead-acid': 26_000, other: 8_300 } as const;

/** 1/h that lead takes and gives at most. Source: `offgrid.lead-rates` (common practice). */
const leadRates = { charge: 0.15, discharge: 0.25 } as const;

const lithiumRates = {
  charge: (t: number): number => lithiumCharge(t).most,
  discharge: (t: number): number => lithiumDischarge(t).most,
};
/** A frozen lead battery is damaged, but not by being charged at -20 °C while it is full enough. */
const rates = {
  'lithium-iron-phosphate': lithiumRates,
  other: lithiumRates,
  'lead-acid': { charge: () => leadRates.charge, discharge: () => leadRates.discharge },
} as const;

const batteryOf = (b: BatteryInputs): PowerSystem['battery'] => {
  const { charge, discharge } = rates[b.chemistry];
  const line = b.chemistry === 'lead-acid' ? coldLead : coldLithium(b.cold);
  const upTo = (most: number | undefined, watts: number): number => Math.min(most ?? watts, watts);
  return {
    energy: b.energy,
    kept: 1 - b.usable,
    oneWay: Math.sqrt(b.roundTrip),
    capacity: byDegree((t) => capacityShare(line, t)),
    charge: byDegree((t) => upTo(b.chargeMost, charge(t) * b.energy * 1000)),
    discharge: byDegree((t) => upTo(b.dischargeMost, discharge(t) * b.energy * 1000)),
    heatCapacity: heatOfCells[b.chemistry] * b.energy,
    conductance: b.boxLoss,
    heater: b.heater,
    heaterBelow: b.heaterBelow,
  };
};

/** A power system laid out for its steps; with its generator or as if it did not start. */
export function systemOf(inputs: PowerInputs, withGenerator: boolean): PowerSystem {
  const { generator, inverter, charger } = inputs;
  const still = { rated: 0, startBelow: 0, stopAbove: 0 };
  return {
    battery: batteryOf(inputs.battery),
    inverter,
    charger,
    generator: withGenerator && generator ? generator : still,
  };
}
