export type { AtticConductances, AtticSurroundings } from './steady.ts';
export { solAirRise, stackVentFlow, steadyAttic, windVentFlow } from './steady.ts';
