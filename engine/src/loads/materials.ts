import type { MaterialLine } from '../plan/lines.ts';
import type { LoadsResult } from './result.ts';

/** m² of ceiling that a cartridge of sealant does. Common practice, no source. */
const areaPerCartridge = 8;

/** What sealing the ceiling takes, where leaking air is among the two largest parts. */
export function materials(result: LoadsResult): readonly MaterialLine[] {
  const rank = result.heatingParts.findIndex((p) => p.part === 'air');
  if (rank < 0 || rank > 1 || !result.attic.ok) return [];
  const { ceiling } = result.attic.value;
  return [
    {
      id: 'loads/sealant',
      trade: 'loads',
      what: 'Cartridges of acoustic sealant for the attic floor',
      kind: 'count',
      amount: Math.max(2, Math.ceil(ceiling / areaPerCartridge)),
      soldBy: 1,
    },
  ];
}
