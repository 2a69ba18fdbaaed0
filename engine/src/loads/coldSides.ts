import { inIdOrder, type ResolvedProject } from '@kneewall/project';
import type { Scenario } from '../plan/scenario.ts';
import { settingOf } from './assembly.ts';
import type { Assembly, Setting, SurfaceKind } from './constructions/index.ts';

type House = ResolvedProject['house'];

/** A construction that parts heated rooms from cold air, and how it stands there. */
export type ColdSide = {
  readonly id: string;
  readonly name: string;
  readonly assembly: Assembly;
  /** What it is where it is used first, in id order. */
  readonly kind: SurfaceKind;
  /** Each way in which it is used, the most exposed first. */
  readonly settings: readonly [Setting, ...Setting[]];
};

/**
 * The constructions between heated rooms and outdoors or an attic, in id order, doors left out. An attic counts as
 * outdoor air: vented ones are close to it in the cold, and that is the side to be careful on.
 */
export function coldSides(house: House, s: Scenario): ColdSide[] {
  const uses = inIdOrder(house.surfaces).flatMap(([, surface]) => {
    const room = surface.room === undefined ? undefined : house.rooms[surface.room];
    const other = s.choice(surface.other);
    const kind = s.choice(surface.kind);
    if (!room || s.choice(room.conditioned) !== 'yes' || kind === 'door') return [];
    if (surface.assembly === undefined || (other !== 'outdoors' && other !== 'attic')) return [];
    return [{ id: surface.assembly, kind, setting: settingOf(kind, other) }];
  });
  return inIdOrder(house.assemblies).flatMap(([id, assembly]) => {
    const mine = uses.filter((u) => u.id === id);
    const [most, ...others] = distinct(mine.map((u) => u.setting)).sort(
      (a, b) => Number(a.sheltered) - Number(b.sheltered),
    );
    const [first] = mine;
    return first && most
      ? [{ id, name: assembly.name ?? id, assembly, kind: first.kind, settings: [most, ...others] as const }]
      : [];
  });
}

const distinct = (settings: readonly Setting[]): Setting[] =>
  settings.filter(
    (a, i) => settings.findIndex((b) => a.direction === b.direction && a.sheltered === b.sheltered) === i,
  );
