import type { MaterialLine } from '../plan/lines.ts';
import type { AirResult } from './result.ts';

/** Fittings that are bought as pieces; collars and boots are counted by run and register, bends of flexible duct are the duct itself. */
const pieces: Readonly<Record<string, string>> = {
  'elbow-round': 'Round elbows',
  'elbow-round-tight': 'Round elbows, tight',
  'elbow-rectangular': 'Rectangular elbows',
  'elbow-rectangular-vaned': 'Rectangular elbows with vanes',
  'tee-branch': 'Tees or wyes for branches',
  reducer: 'Reducers',
};

/** Elbows, tees and reducers as they are drawn. */
export const fittingLines = (fittings: AirResult['fittings']): MaterialLine[] =>
  Object.entries(pieces).flatMap(([kind, what]) => {
    const amount = fittings[kind] ?? 0;
    return amount > 0 ? [{ id: `air/${kind}`, trade: 'air', what, kind: 'count', amount, soldBy: 1 } as const] : [];
  });
