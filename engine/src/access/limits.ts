/** N that one person pulls steadily. Source: `access.pull`. */
export const pullMost = 250;
/** Times the load that lifting gear has to hold before it breaks. Source: `access.gear`. */
export const gear = 5;
/** Of timber's strength, what is left when no engineer has looked. Source: `access.engineer`. */
export const strengthLeft = 0.2;
/** s of an hour: too little to begin, and what is called comfortable. Source: `access.screening`. */
export const quarter = 900;
