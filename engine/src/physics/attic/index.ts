export type { AtticAir, DeckSides } from './deck.ts';
export { atticVapour, deckTemperature } from './deck.ts';
export type { AtticConductances, AtticSurroundings } from './steady.ts';
export { solAirRise, stackVentFlow, steadyAttic, windVentFlow } from './steady.ts';
