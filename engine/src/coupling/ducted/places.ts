import type { DuctSection } from '../../air/ductwork.ts';

/** The zones that air in ducts may come from, lose heat to, or be blown into. */
export type Places = {
  readonly rooms: readonly string[];
  /** Zone ids of attic and space below, where the house has them. */
  readonly attic?: string;
  readonly below?: string;
  /** The room that ducts inside the house run through. */
  readonly inside: string;
};

/** Every zone once: rooms, then the spaces round them. */
export const zonesOf = (p: Places): string[] => [
  ...p.rooms,
  ...(p.attic ? [p.attic] : []),
  ...(p.below ? [p.below] : []),
];

/** The zone a section runs through. A house without such a space has it inside. */
export const placeOf = (x: DuctSection, p: Places): string =>
  (x.place === 'attic' ? p.attic : x.place === 'below' ? p.below : undefined) ?? p.inside;
