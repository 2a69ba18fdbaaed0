export { octaveBands } from './bands.ts';
export { criteriaTogether, criterionCurves, noiseCriterion } from './criterion.ts';
export { bendLoss, endReflection, fanSound, pressureRise } from './fan.ts';
export type { SoundingGrille } from './grille.ts';
export { grillePeak, grilleSound, soundRise } from './grille.ts';
export type { SoundRoom } from './room.ts';
export { roomEffect, sheetRoomEffect } from './room.ts';
