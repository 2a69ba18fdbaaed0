import { inch } from '../physics/exact.ts';

/** Tenths of an inch, and millimetres. */
const inches = (m: number): number => Math.round((m / inch) * 10) / 10;
const millimetres = (m: number): number => Math.round(m * 1000);

/** A length as a shop is asked for it, in both systems. m. */
export const lengthSaid = (m: number): string => `${inches(m)} in (${millimetres(m)} mm)`;

/** An inside size as a shop is asked for it, in both systems. m. */
export const sizeSaid = (
  size: { readonly diameter: number } | { readonly width: number; readonly height: number },
): string =>
  'diameter' in size
    ? lengthSaid(size.diameter)
    : `${inches(size.width)} by ${inches(size.height)} in (${millimetres(size.width)} by ${millimetres(size.height)} mm)`;
