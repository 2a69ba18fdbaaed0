import { printQuantity, type System } from '@kneewall/project';

/** m as it is marked out: feet and inches to a sixteenth, or whole millimetres. */
export const cutLength = (metres: number, units: System): string =>
  units === 'us' ? printQuantity(metres, 'length', 'us') : `${Math.round(metres * 1000)} mm`;

/** The same in both systems, the sheet's own first. */
export const bothCutLengths = (metres: number, units: System): string =>
  `${cutLength(metres, units)} (${cutLength(metres, units === 'us' ? 'si' : 'us')})`;
