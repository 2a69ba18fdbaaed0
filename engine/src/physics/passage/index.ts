export { chance } from './chance.ts';
export { clearance } from './clearance.kernel.ts';
export { corridor } from './corridor.ts';
export {
  type BadOutline,
  badOutline,
  type Obstacles,
  type Outline,
  obstaclesOf,
  type Piece,
  type Point,
  type Pose,
} from './obstacles.ts';
export { type Answer, planPath, type Question } from './planPath.ts';
export { type Path, type Replay, replay, sweep } from './replay.ts';
export { type Asked, type Room, roomOnWay } from './roomOnWay.ts';
