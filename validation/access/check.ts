import { checker } from '../src/checker.ts';

export const id = 'access';
export const check = checker(id);
export const inch = 0.0254;
export const pound = 0.45359237;
/** Pa. */
export const poundSquareInch = 6894.757;
export const poundSquareFoot = 47.88026;
