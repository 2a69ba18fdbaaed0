import type { FaultKind } from '../../commissioning/causes/faults.ts';
import type { Channel } from './system.ts';

/** What a channel shows instead of its true value. */
type Shown = (value: number, size: number, channel: Channel) => number;

const times =
  (...groups: readonly Channel['group'][]): Shown =>
  (value, size, channel) =>
    groups.includes(channel.group) ? value * size : value;

const plus =
  (id: string): Shown =>
  (value, size, channel) =>
    channel.id === id ? value + size : value;

/** Faults that leave ducts and unit as they are and spoil one kind of reading alone. */
export const instrumentFaults: Partial<Readonly<Record<FaultKind, Shown>>> = {
  'gauge-wrong': times('pressure', 'room-pressure'),
  'flow-wrong': times('flow'),
  'thermometer-wrong': plus('commissioning/supply-air'),
  'base-load': plus('commissioning/power'),
  'sensor-place': plus('commissioning/room-offset'),
  'blocked-drain': times('water'),
};
