const gravity = 9.80665;
const kelvin = 273.15;

/** A jet as it leaves its opening: m/s, open area m², K above the room (negative when colder), and the room, °C. */
export type WarmJet = {
  readonly velocity: number;
  readonly area: number;
  readonly excess: number;
  readonly room: number;
};

/** Diameter of the round opening of equal area, m. */
const diameterOf = (area: number): number => Math.sqrt((4 * area) / Math.PI);

/** Buoyancy over inertia at the opening, g Δt d / (T V²); positive for warm air. Velocity above zero. Source: `jet.archimedes`. */
export const archimedes = ({ velocity, area, excess, room }: WarmJet): number =>
  (gravity * excess * diameterOf(area)) / ((room + kelvin) * velocity ** 2);

/**
 * How far below its opening a warm jet blown straight down gets before it turns back, m: 2.46 r Fr, Fr = V/√(g r Δt/T).
 * The jet has to be warmer than the room (`excess` above zero); for Fr above about 3. Source: `jet.fountain` (Turner 1966,
 * from memory).
 */
export const reachDown = ({ velocity, area, excess, room }: WarmJet): number => {
  const r = diameterOf(area) / 2;
  return (2.46 * velocity * Math.sqrt(r)) / Math.sqrt((gravity * excess) / (room + kelvin));
};

/**
 * How far the middle of a jet blown level has fallen (positive) or risen at a distance, m: 0.065 |Ar| (x/d)³ d. A free
 * jet: one along a ceiling falls less. Distance m. Source: `jet.drop` (Koestel 1955, from memory).
 */
export const dropAt = (distance: number, jet: WarmJet): number => {
  const d = diameterOf(jet.area);
  return -0.065 * archimedes(jet) * (distance / d) ** 3 * d;
};
