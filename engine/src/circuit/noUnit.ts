import type { Draft } from '../plan/judge.ts';
import type { CircuitResult } from './result.ts';

/** Without a unit nothing can be said of its wires, and once is enough to say so. */
export const noUnit = ({ unit }: CircuitResult): Draft => ({
  id: 'wire:outdoor',
  subject: 'outdoor',
  holdPoint: 'order',
  consequence: 'harm',
  kind: 'current',
  value: unit.ok ? { ok: false, because: 'missing', paths: ['candidates'] } : unit,
  limit: {},
  source: 'circuit.nameplate',
  working: 'circuit/wire:outdoor',
});
