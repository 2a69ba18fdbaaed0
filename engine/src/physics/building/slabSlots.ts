/**
 * Places of a slab's numbers in `State.slab`, `slabSlots` for each slab: every array that a loop touches costs it as much
 * as the arithmetic, so all of a slab lies in one. The first sixteen are what each step reads, the rest what a row reads.
 */
export const slabSlots = 32;
/** W/K from each face to the air and to the radiation of its zone; of an outer face, to the open air and to the sky. */
export const conv1 = 0;
export const rad1 = 1;
export const conv2 = 2;
export const rad2 = 3;
/** K at the faces for a watt at them. */
export const inverse11 = 4;
export const inverse12 = 5;
export const inverse22 = 6;
/** W that come to each face in the step whatever surrounds it: from the slab's past, and sun. */
export const known1 = 7;
export const known2 = 8;
/** °C of the faces if the zones stood at 0 °C. */
export const alone1 = 9;
export const alone2 = 10;
/** °C of the faces. */
export const face1 = 11;
export const face2 = 12;
/** W/K of the modes that forget within a step. */
export const fastNear = 13;
export const fastFar = 14;
export const fastAcross = 15;
/** W/K of the slab over a step. */
export const near = 16;
export const far = 17;
export const across = 18;
/** Film to the air, its change with the way the heat flows (sign: looks), and radiation at 20 °C; of each zone face. */
export const convection1 = 19;
export const swing1 = 20;
export const radiation1 = 21;
export const convection2 = 22;
export const swing2 = 23;
export const radiation2 = 24;
/** Outdoor faces: film in W/K and per m/s of wind; emitting area seen by the sky and by what has the air's temperature, m². */
export const film = 22;
export const filmByWind = 23;
export const toSky = 24;
export const toAround = 25;
/** J/K at each face of the modes that forget within a step. */
export const fastEnergy1 = 26;
export const fastEnergy2 = 27;
/** W that the past of a slab whose other side is given gave that face in the step just done. */
export const gave2 = 28;

/**
 * Places of a mode's numbers in `State.modes`: it goes on as `decay` times itself and `q1` and `q2` times the faces.
 */
export const modeSlots = 4;
export const decay = 0;
export const q1 = 1;
export const q2 = 2;
export const mode = 3;
