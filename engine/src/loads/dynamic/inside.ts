import type { Gain, Moisture, Passage, Slab, WallLayer } from '../../physics/building/index.ts';
import { materials } from '../constructions/index.ts';
import { edgeOf } from '../rooms.ts';
import { zoneFace } from './faces.ts';
import type { Shell, ShellRoom } from './shell.ts';

const board: WallLayer = { ...materials.gypsum, thickness: 0.0127 };
const boards: WallLayer = { ...materials['floor-board'], thickness: 0.022 };
const partition = [board, { resistance: 0.18 }, board];
const storeyFloor = [board, { resistance: 0.18 }, boards];

/** The room that the others open into: a hall where there is one on the ground floor, else the largest room. */
export function hubOf(rooms: readonly ShellRoom[]): ShellRoom | undefined {
  const halls = rooms.filter((r) => r.use === 'hall' && r.storey <= 1);
  return (halls.length > 0 ? halls : [...rooms]).sort((a, b) => b.floorArea - a.floorArea)[0];
}

/**
 * Inside walls and floors, which hold heat and join each room to the hub: what a nearly square room's four walls are
 * more than the walls entered for it; the floor of an upper room that has none entered.
 */
export function insideSlabs(shell: Shell, hub: ShellRoom): Slab[] {
  const below = [...shell.rooms].filter((r) => r.storey <= 1).sort((a, b) => b.floorArea - a.floorArea)[0] ?? hub;
  return shell.rooms.flatMap((room): Slab[] => {
    const walls = shell.surfaces.filter((x) => x.room === room.id && x.tilt > 60 && x.tilt < 120);
    const entered = walls.reduce((a, x) => a + x.area + x.windows.reduce((b, w) => b + w.width * w.height, 0), 0);
    const left = edgeOf(room.floorArea) * room.height - entered;
    const between = (id: string, area: number, layers: readonly WallLayer[], other: string, tilt: number): Slab => ({
      id: `${id} ${room.id}`,
      area,
      layers,
      inside: zoneFace(room.id, tilt),
      other: zoneFace(other, 180 - tilt),
    });
    const floored = shell.surfaces.some((x) => x.room === room.id && x.part === 'floor');
    return [
      ...(left > 1 && room !== hub ? [between('partition', left, partition, hub.id, 90)] : []),
      ...(!floored && room.storey > 1 && room !== below
        ? [between('floor', room.floorArea, [...storeyFloor].reverse(), below.id, 0)]
        : []),
    ];
  });
}

/** Flow through an open doorway of 0.8 by 2 m for a difference of 1 K, m³/s: Cd/3 W sqrt(g H³/T). Source: `loads.doorway` (from memory). */
const doorway = (0.6 / 3) * 0.8 * Math.sqrt((9.81 * 2 ** 3) / 293);

/** Doors stand open for their share of the time; closed, a little air passes under them. Source: `loads.doors` (common practice). */
export const passagesOf = (shell: Shell, hub: ShellRoom): Passage[] =>
  shell.rooms
    .filter((r) => r !== hub)
    .map((r) => ({ between: [r.id, hub.id], buoyant: r.doorOpen * doorway, steady: 0.005 }));

/** Share of the day's heat from appliances that falls in each hour: cooking and screens from late afternoon. Source: `loads.day` (common practice). */
const applianceHours = [
  ...Array.from({ length: 6 }, () => 0.4),
  0.6,
  0.7,
  0.6,
  0.5,
  0.5,
  0.6,
  0.6,
  0.5,
  0.5,
  0.6,
  ...Array.from({ length: 5 }, () => 1),
  0.8,
  0.6,
  0.4,
];

/** People at rest and appliances, shared out by room volume; W. */
export function gainsOf(shell: Shell, people: number, appliances: number): Gain[] {
  const volume = shell.rooms.reduce((a, r) => a + r.floorArea * r.height, 0);
  return shell.rooms.map((r) => ({
    zone: r.id,
    watts: applianceHours.map((h) => ((people * 67 + appliances * h) * r.floorArea * r.height) / volume),
    radiant: 0.5,
  }));
}

/** kg of vapour a day that a household gives off beside its people's breath. Source: `loads.vapour` (from memory). */
const householdVapour = 4;
const personVapour = 0.045;

/**
 * Vapour and what holds it, by room: breath everywhere, cooking and washing where they happen. Walls and furniture
 * follow the air within hours and are worth some fifteen times the air of the room. Source: `loads.moisture-buffer`
 * (common practice).
 */
export function moistureOf(shell: Shell, people: number, driest: number): Record<string, Moisture> {
  const volume = shell.rooms.reduce((a, r) => a + r.floorArea * r.height, 0);
  const wet = shell.rooms.filter((r) => r.use === 'kitchen' || r.use === 'bath' || r.use === 'living');
  const wetArea = wet.reduce((a, r) => a + r.floorArea, 0);
  const rooms = shell.rooms.map((r): [string, Moisture] => {
    const size = r.floorArea * r.height;
    const breath = (people * personVapour * size) / volume / 3600;
    const work = wet.length > 0 ? (wet.includes(r) ? r.floorArea / wetArea : 0) : size / volume;
    const vapour = applianceHours.map((h) => breath + (householdVapour * work * h) / 14 / 3600);
    return [r.id, { vapour, bufferAir: size * 1.2 * 15, bufferHours: 4, driest }];
  });
  return Object.fromEntries(rooms);
}

/** J/K of furniture for each m² of floor, air left out. Source: `iso-52016.contents` (from memory). */
export const furniture = 7000;
