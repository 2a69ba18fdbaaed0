/** Share of the slope that slides off in an hour, for a sine of the tilt of 1; Marion et al. 2013. Source: `power.snow`. */
export const slide = 0.197;

/** Whether snow covers the row anew: cm in the hour above a threshold. */
export const coversAnew = (snowfall: number, threshold = 1): boolean => snowfall > threshold;

/** Whether snow slides: W/m² on the row and °C of the air. Source: `power.snow` (from memory). */
export const slides = (light: number, air: number): boolean => air > light / -80;

/** Share covered at the end of a step of so many hours, degrees of tilt. */
export const coveredAfter = (covered: number, tilt: number, sliding: boolean, hours = 1): number =>
  sliding ? Math.max(0, covered - slide * Math.sin((tilt * Math.PI) / 180) * hours) : covered;

/** Share of the power lost where strings lie across the slope: a string that is touched is lost. */
export const snowLoss = (covered: number, strings: number): number => Math.ceil(covered * strings - 1e-9) / strings;
