import type { AirModel, DuctSection, Terminal } from '../ductwork.ts';
import { sideOf } from '../model.ts';

/** Where a damper changes the air of one room and of no other. */
export type DamperPlace = {
  /** The section in whose collar it sits, or the register where a section serves several rooms. */
  readonly id: string;
  readonly at: 'collar' | 'register';
  readonly name: string;
  readonly room: string;
  /** m², of the duct or of the register's face. */
  readonly area: number;
  /** m, where the duct is round. */
  readonly diameter?: number;
  /** Supply registers behind it. */
  readonly registers: readonly string[];
  /** Sections between it and the unit, nearest to the unit last. */
  readonly trunk: readonly string[];
};

/**
 * The places for dampers: on every way out, the section nearest to the unit behind which all air goes to one room. Where
 * registers of several rooms hang on one section each of those registers is a place of its own. In the model's order.
 */
export function damperPlaces(model: AirModel): DamperPlace[] {
  const byId = new Map(model.sections.map((x) => [x.id, x]));
  const supplies = model.terminals.filter((t) => sideOf(model, t.section) === 'supply');
  const behind = new Map<string, Terminal[]>(model.sections.map((x) => [x.id, []]));
  for (const t of supplies) for (const x of wayFrom(t.section, byId)) behind.get(x.id)?.push(t);
  const oneRoom = (id: string): boolean => new Set((behind.get(id) ?? []).map((t) => t.room)).size === 1;
  const collars = model.sections.flatMap((x): DamperPlace[] => {
    const registers = behind.get(x.id) ?? [];
    const [first] = registers;
    if (!first || !oneRoom(x.id) || (x.from !== undefined && oneRoom(x.from))) return [];
    const trunk = wayFrom(x.from, byId).map((y) => y.id);
    const round = x.kind === 'flexible' || x.kind === 'round' ? { diameter: x.diameter } : {};
    const own = { id: x.id, at: 'collar', name: x.name, room: first.room, area: x.area, ...round } as const;
    return [{ ...own, registers: registers.map((t) => t.id), trunk }];
  });
  const alone = supplies.filter((t) => !oneRoom(t.section));
  return [
    ...collars,
    ...alone.map((t): DamperPlace => {
      const trunk = wayFrom(t.section, byId).map((x) => x.id);
      return { id: t.id, at: 'register', name: t.name, room: t.room, area: t.faceArea, registers: [t.id], trunk };
    }),
  ];
}

/** A section and all between it and the unit. */
function wayFrom(id: string | undefined, byId: ReadonlyMap<string, DuctSection>): DuctSection[] {
  const way: DuctSection[] = [];
  for (let x = id === undefined ? undefined : byId.get(id); x; x = x.from === undefined ? undefined : byId.get(x.from))
    way.push(x);
  return way;
}
