export type { WarmJet } from './buoyant.ts';
export { archimedes, dropAt, reachDown } from './buoyant.ts';
export { besideMiddle, halfWidth, middleSpeed } from './speed.ts';
export type { Outlet } from './throw.ts';
export { throwConstants, throwTo } from './throw.ts';
