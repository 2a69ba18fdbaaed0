import { printQuantity, type System } from '@kneewall/project';
import type { DuctFact, FaceFact, Size } from './ductFacts.ts';

export const madeOf: Readonly<Record<DuctFact['kind'], string>> = {
  flexible: 'flexible',
  round: 'round metal',
  rectangular: 'rectangular metal',
  board: 'duct board',
};

/** “7"”, “20" × 12"”, “406 × 203 mm”; “no size” where none is entered. */
export function sizeWords(size: Size | undefined, units: System): string {
  if (size === undefined) return 'no size';
  const length = (m: number): string => printQuantity(m, 'length', units);
  if ('diameter' in size) return length(size.diameter);
  const [width, height] = [length(size.width), length(size.height)];
  return width.endsWith(' mm') && height.endsWith(' mm') ? `${width.slice(0, -3)} × ${height}` : `${width} × ${height}`;
}

type Kind = 'flow' | 'velocity' | 'pressure' | 'length';

/** A number in the person's units, or that nobody knows it. */
export const orUnknown = (value: number | undefined, kind: Kind, units: System): string =>
  value === undefined ? 'unknown' : printQuantity(value, kind, units);

/** What stands beside a duct, the fullest first: name, size, flow and pressure lost, down to its tag alone. */
export function ductLabels(duct: DuctFact, units: System): readonly (readonly string[])[] {
  const size = sizeWords(duct.size, units);
  const flow = duct.flow === undefined ? [] : [printQuantity(duct.flow, 'flow', units)];
  const lost = duct.drop === undefined ? [] : [lostWords(duct.drop, units)];
  return [
    [`${duct.tag} ${duct.name}`, [size, ...flow, ...lost].join(' · ')],
    [`${duct.tag} · ${size}`, [...flow, ...lost].join(' · ')].filter((line) => line !== ''),
    [`${duct.tag} · ${size}`, ...flow],
    [duct.tag],
  ];
}

/** “−15 Pa”; what rounds to nothing has no sign. */
export function lostWords(drop: number, units: System): string {
  const printed = printQuantity(drop, 'pressure', units);
  return printed.startsWith('0 ') ? printed : `−${printed}`;
}

/** What stands beside a register: its flow. */
export const faceLabels = (face: FaceFact, units: System): readonly (readonly string[])[] =>
  face.flow === undefined ? [] : [[printQuantity(face.flow, 'flow', units)]];
