import { inch } from '../../physics/exact.ts';

/** m of a sheet of plywood as it is sold, 4 ft by 8 ft. Common practice, no source: `materials.packs`. */
export const panelSheet = { width: 48 * inch, length: 96 * inch } as const;
