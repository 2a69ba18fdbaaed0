export { type ChangeInTime, changeInTime } from './changeInTime.ts';
export { type ChangePoint, changePoint } from './changePoint.ts';
export { type DayMeans, type HouseLoss, houseLoss, type Interval, type Weak } from './houseLoss.ts';
export { coefficientHalfWidth, type LeastSquares, leastSquares, predict } from './leastSquares.ts';
export { type Normal, normalUpdate } from './normalUpdate.ts';
export { studentT } from './studentT.ts';
export { fitTwoCapacities, type HouseHours, type TwoCapacities } from './twoCapacities.ts';
