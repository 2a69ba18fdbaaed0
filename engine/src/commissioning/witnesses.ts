import type { Heard } from './causes/likelihood.ts';
import type { ResponseTable } from './causes/table.ts';
import { flowFromHeat, flowFromTable } from './kernels/witness.ts';

/** The unit's flow told in up to three ways that know nothing of each other, m³/s of return air. */
export type Witnesses = {
  readonly expected: number;
  /** The sum of all registers, where each was read. */
  readonly registers?: number;
  /** The blower's table at the static pressure that was read. */
  readonly table?: number;
  /** What the unit should give over the difference of supply and return air that was read. */
  readonly heat?: number;
};

/** Three witnesses side by side: where they disagree, one of the methods is wrong, or air is lost on the way. */
export function witnesses(table: ResponseTable, heard: readonly Heard[]): Witnesses {
  const { channels, base, unit } = table;
  const at = (id: string) => heard.findLast((h) => channels[h.channel]?.id === id)?.value;
  const registers = channels.flatMap((c) => (c.id.startsWith('air/flow:') ? [at(c.id)] : []));
  const all = registers.every((r) => r !== undefined) ? registers.reduce((a, b) => a + b, 0) : undefined;
  const pressure = at('air/static');
  const byTable = pressure === undefined ? undefined : flowFromTable(unit.points, pressure, unit.thinness);
  const supply = at('commissioning/supply-air');
  const back = at('commissioning/unit-return') ?? base[channels.findIndex((c) => c.id === 'commissioning/unit-return')];
  const byHeat =
    supply === undefined || back === undefined
      ? undefined
      : flowFromHeat(unit.sensible, Math.abs(supply - back), unit.density);
  return {
    expected: unit.flow,
    ...(all === undefined || registers.length === 0 ? {} : { registers: all }),
    ...(byTable === undefined ? {} : { table: byTable }),
    ...(byHeat === undefined ? {} : { heat: byHeat }),
  };
}
