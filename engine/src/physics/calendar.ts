/** Days of the months of a year without leap day, and the day of the year before which each month begins. */
export const daysInMonth = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
export const monthStart = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365] as const;
