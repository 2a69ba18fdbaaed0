export { entropy, expectedGain, posterior } from './discrete.ts';
export { backward, factorise, forward, logDensity } from './gaussian.kernel.ts';
export { normalBelow } from './normal.ts';
