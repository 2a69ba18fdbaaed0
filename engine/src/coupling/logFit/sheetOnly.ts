import type { UnitModel } from '../../equipment/result.ts';

/** A unit as its sheet has it, without what a log taught. */
export const sheetOnly = ({ drawTimes, ...model }: UnitModel): UnitModel =>
  drawTimes === undefined ? model : drawing(model, 1 / drawTimes);

/** A unit whose heating rows draw so many times as much. */
export const drawing = (model: UnitModel, times: number): UnitModel => ({
  ...model,
  rows: model.rows.map((r) => (r.mode === 'heating' ? { ...r, power: r.power * times } : r)),
});
