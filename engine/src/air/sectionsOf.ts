import type { AirModel, DuctSection } from './ductwork.ts';

/** Sections of one side, each after the one it joins. */
export function sectionsOf({ sections }: AirModel, side: DuctSection['side']): DuctSection[] {
  const mine = sections.filter((x) => x.side === side);
  const beyond = (from: string | undefined): DuctSection[] =>
    mine.filter((x) => x.from === from).flatMap((x) => [x, ...beyond(x.id)]);
  return beyond(undefined);
}
