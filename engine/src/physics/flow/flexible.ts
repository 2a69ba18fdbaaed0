/** Equivalent roughness of flexible duct pulled tight, m. Source: `flow.roughness`. */
export const flexibleRoughness = 0.0009;

/**
 * How many times the friction of a fully stretched flexible duct a slack one has. Compression as a share of the
 * stretched length, diameter m. It multiplies the stretched rate over the length as installed. Fitted for 6 to 10 in,
 * up to 30 %. Source: `flow.flexible-compression`.
 */
export const compressionFactor = (compression: number, diameter: number): number =>
  1 + 0.58 * (100 * compression) * Math.exp(-0.126 * (diameter / 0.0254));
