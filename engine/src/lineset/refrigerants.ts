import type { Flammable } from './kernels/roomRule.ts';

/** What burns, by the name on the plate; kg/m³ of the least share that does. Source: `lineset.burns`. */
const burning: Readonly<Record<string, Flammable>> = {
  R32: { group: 'A2L', least: 0.307 },
  R454B: { group: 'A2L', least: 0.297 },
  R1234YF: { group: 'A2L', least: 0.289 },
  R290: { group: 'A3', least: 0.038 },
};
/** What does not burn, of those that units are filled with. Source: `lineset.burns`. */
const others = ['R410A', 'R134A', 'R407C', 'R22', 'R744'];

/** A refrigerant by its name, however it is written; `unknown` for one that is in neither list. */
export function refrigerantOf(name: string): Flammable | 'none' | 'unknown' {
  const plain = name.toUpperCase().replaceAll(/[^A-Z0-9]/g, '');
  const key = plain.startsWith('R') ? plain : `R${plain}`;
  return burning[key] ?? (others.includes(key) ? 'none' : 'unknown');
}
