/** The version that a plan says it was made with, so that a print can be made again. */
export const engineVersion = '0.1.0';
