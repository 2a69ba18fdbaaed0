/** Middles of the octave bands that noise in rooms is judged in, Hz. */
export const octaveBands = [63, 125, 250, 500, 1000, 2000, 4000, 8000] as const;
