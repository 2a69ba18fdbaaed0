/** m across from the left end and up from the ground; below 0 out from the wall. */
export type Box = { readonly x: number; readonly z: number; readonly width: number; readonly height: number };
