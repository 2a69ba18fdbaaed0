export { entropy, expectedGain, posterior } from './discrete.ts';
export { factorise, forward, logDensity } from './gaussian.kernel.ts';
export { normalBelow } from './normal.ts';
