/** Places in the state. */
export const stored = 0;
export const cell = 1;
export const running = 2;

/** Places in the flows of a step, all W but the last two. */
export const sunUsed = 0;
export const sunLeft = 1;
/** Sun left because cells were too cold to charge. */
export const sunRefused = 2;
export const generated = 3;
export const served = 4;
/** Wanted and not to be had. */
export const short = 5;
export const into = 6;
export const outOf = 7;
export const heated = 8;
export const lost = 9;
/** W by which what comes in misses what goes out, is lost and is stored. */
export const residual = 10;
export const flowCount = 11;
