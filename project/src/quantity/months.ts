/** Months by name, January first. */
export const monthNames = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** The same in three letters, where columns are narrow. */
export const shortMonths: readonly string[] = monthNames.map((name) => name.slice(0, 3));
