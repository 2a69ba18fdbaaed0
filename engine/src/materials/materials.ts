import type { MaterialLine } from '../plan/lines.ts';
import { laidBoard, sheetLines } from './cutting/lines.ts';
import type { MaterialsResult } from './result.ts';

/** What joining and fixing the things of the other trades uses up, by joint, by hanger, by metre; and board as it is laid on sheets. */
export const materials = ({ list, cut }: MaterialsResult): readonly MaterialLine[] => [
  ...(cut.ok ? sheetLines(cut.value) : []),
  ...(list.ok ? list.value.usedUp : []),
];

/** Board by the area of its walls, once its sheets are counted. */
export const standsFor = ({ cut }: MaterialsResult): readonly string[] => laidBoard(cut);
