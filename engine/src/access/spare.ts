/** m on each side for hands, a crooked frame and a tape read wrong. Source: `access.spare`. */
export const spareWanted = 0.012;

/** m that codes commonly ask of a hatch to an appliance, short and long. Source: `access.opening`. */
export const hatchLeast = [0.508, 0.762] as const;
