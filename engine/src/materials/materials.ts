import type { MaterialLine } from '../plan/lines.ts';
import { cutLines, laidBoard } from './cutting/lines.ts';
import { capLines } from './cutting/made/lines.ts';
import type { MaterialsResult } from './result.ts';

/** What joining and fixing the things of the other trades uses up, by joint, by hanger, by metre; what cutting takes as it is laid out, and caps. */
export const materials = ({ own, list, cut }: MaterialsResult): readonly MaterialLine[] => [
  ...(cut.ok ? cutLines(cut.value) : []),
  ...capLines(own.caps),
  ...(list.ok ? list.value.usedUp : []),
];

/** Board by the area of its walls, once its sheets are counted. */
export const standsFor = ({ cut }: MaterialsResult): readonly string[] => laidBoard(cut);
