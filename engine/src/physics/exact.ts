/** Exact by definition: m in an inch, and radians in a degree. */
export const inch = 0.0254;
export const rad = Math.PI / 180;
