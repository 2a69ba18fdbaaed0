import type { MaterialLine } from '../plan/lines.ts';
import type { MaterialsResult } from './result.ts';

/** What joining and fixing the things of the other trades uses up: by joint, by hanger, by metre. */
export const materials = ({ list }: MaterialsResult): readonly MaterialLine[] => (list.ok ? list.value.usedUp : []);
