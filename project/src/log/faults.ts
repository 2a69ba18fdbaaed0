/** Why a row, or one cell of it, was left out or moved. */
export type LogFault = keyof typeof faultWords;

export const faultWords = {
  'no-moment': 'date or time cannot be read',
  'short-row': 'too few cells',
  'no-such-hour': 'in the hour that clocks skip in spring',
  'not-a-number': 'a cell that is no number',
  impossible: 'a value that cannot be',
  'twice-the-moment': 'the same moment again: the first was kept',
  'out-of-order': 'out of order: put where it belongs',
  'meter-fell': 'a meter that ran backwards or began anew: that step was left out',
  'meter-leapt': 'a meter that leapt by more than 100 kW: that step was left out',
  gap: 'a gap before it of more than three rows’ time',
} as const;

/** How often, and in which line first. */
export type Faults = Partial<Record<LogFault, { count: number; readonly firstLine: number; readonly what?: string }>>;

export function countFault(faults: Faults, fault: LogFault, line: number, what?: string): void {
  const known = faults[fault];
  if (known) known.count++;
  else faults[fault] = { count: 1, firstLine: line, ...(what === undefined ? {} : { what: what.slice(0, 40) }) };
}
