import { inch } from '../exact.ts';

/** Equivalent roughness of flexible duct pulled tight, m. Source: `flow.roughness`. */
export const flexibleRoughness = 0.0009;

/**
 * How many times the friction of a fully stretched flexible duct a slack one has. Compression as a share of the
 * stretched length, diameter m. It multiplies the stretched rate over the length as installed. Fitted for 6 to 10 in,
 * up to 30 %. Source: `flow.flexible-compression`.
 */
export const compressionFactor = (compression: number, diameter: number): number =>
  1 + 0.58 * (100 * compression) * Math.exp(-0.126 * (diameter / inch));

/**
 * Degrees by which flexible duct turns between two hangers where it sags: it hangs as a parabola, so that its slope at a
 * hanger is four times sag over span, once down and once up. m; sag zero or more. Source: `flow.flexible-sag`.
 */
export const sagTurn = (sag: number, span: number): number => (2 * Math.atan((4 * sag) / span) * 180) / Math.PI;
