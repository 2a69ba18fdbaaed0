/** Days of the months of a year without leap day, and the day of the year before which each month begins. */
export const daysInMonth = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
export const monthStart = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365] as const;

/** Month, 0 to 11, of a day of the year, 0 to 364. */
export const monthOfDay = (day: number): number => monthStart.findIndex((first) => first > day) - 1;

/** 1 January 2001, a year without leap day, in seconds since 1970. Any such year does: the sun repeats to a quarter of a degree. */
export const newYear = 978_307_200;
