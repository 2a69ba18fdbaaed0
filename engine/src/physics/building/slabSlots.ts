/**
 * Places of a slab's own numbers in `Work.slab`, `slabSlots` for each slab: what a step reads together lies together,
 * since every array that a loop touches costs it as much as the arithmetic.
 */
export const slabSlots = 12;
/** W/K from each face to the air and to the radiation of its zone. */
export const conv1 = 0;
export const rad1 = 1;
export const conv2 = 2;
export const rad2 = 3;
/** W/K from an outer face to the open air and to the sky. */
export const air2 = 4;
export const sky2 = 5;
/** K at the faces for a watt at them. */
export const inverse11 = 6;
export const inverse12 = 7;
export const inverse22 = 8;
/** W that come to each face in the step, the nodes aside; °C where the other side is given. */
export const known1 = 9;
export const known2 = 10;
/** W that the slab's past still gives its second face. */
export const past2 = 11;
