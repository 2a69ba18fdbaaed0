import type { Project } from '@kneewall/project';

type Entry = Record<string, unknown>;
const measured = (value: number) => ({ value, known: 'measured' as const });
const nameplate = (value: number) => ({ value, known: 'nameplate' as const });
const guessed = (low: number, likely: number, high: number) => ({
  value: { low, likely, high },
  known: 'estimated' as const,
});
const inches = (n: number) => measured(n * 0.0254);
const ordered = (entries: readonly (readonly [string, Entry])[]): Record<string, Entry> =>
  Object.fromEntries(entries.map(([id, entry], i) => [id, { order: String(i).padStart(3, '0'), ...entry }]));

/**
 * Alder Hall, an invented community hall of twelve rooms: the large project that benchmarks run on. Sizes follow from
 * the room's number, so that every run makes the same hall.
 */
export function alderHall(): Project {
  const rooms = Array.from({ length: 12 }, (_, i) => `room-${String(i + 1).padStart(2, '0')}`);
  const areaOf = (i: number) => 14 + 3 * (i % 5);
  return {
    schema: 1,
    about: { name: 'Alder Hall', note: 'A community hall, invented for benchmarks.', invented: true },
    site: {
      latitude: measured(47.3),
      longitude: measured(-70.2),
      elevation: measured(210),
      coldNight: guessed(-24, -22, -20),
      hotAfternoon: guessed(29, 31, 33),
    },
    house: {
      era: '1966-1980',
      storeys: measured(1),
      rooms: ordered(
        rooms.map((id, i) => [id, { name: `Room ${i + 1}`, floorArea: measured(areaOf(i)), height: measured(2.7) }]),
      ),
      assemblies: { wall: { common: 'wall-r11' }, ceiling: { common: 'ceiling-r30' }, floor: { common: 'floor-r11' } },
      surfaces: ordered(rooms.flatMap((room, i) => surfacesOf(room, i, areaOf(i)))),
      openings: ordered(
        rooms.map((room, i) => [
          `${room}-window`,
          { surface: `${room}-outer`, glazing: 'double', width: measured(1.2 + 0.1 * (i % 4)), height: measured(1.3) },
        ]),
      ),
    },
    candidates: { hall: { name: 'The 48: 48,000 Btu/h', chosen: true, ...sheet() } },
    routes: { ducts: { filter: { width: inches(24), height: inches(30) }, ...ducts(rooms) } },
  } as Project;
}

function surfacesOf(room: string, i: number, area: number): [string, Entry][] {
  const wall = { room, kind: 'wall', other: 'outdoors', assembly: 'wall' };
  return [
    [`${room}-outer`, { ...wall, area: measured(11 + (i % 3)), azimuth: measured((i * 90) % 360) }],
    [`${room}-side`, { ...wall, area: measured(6 + (i % 4)), azimuth: measured((i * 90 + 90) % 360) }],
    [`${room}-ceiling`, { room, kind: 'ceiling', other: 'attic', assembly: 'ceiling', area: measured(area) }],
    [`${room}-floor`, { room, kind: 'floor', other: 'below', assembly: 'floor', area: measured(area) }],
  ];
}

function sheet(): Entry {
  const row = (mode: string, speed: string, outdoor: number, capacity: number, power: number): [string, Entry] => [
    `${mode}-${speed}-${outdoor + 100}`,
    {
      mode,
      speed,
      outdoor: nameplate(outdoor),
      capacity: nameplate(capacity),
      power: nameplate(power),
      airflow: nameplate(0.68),
    },
  ];
  return {
    rows: ordered([
      row('heating', 'most', 8, 16_500, 4700),
      row('heating', 'most', -8, 14_800, 5600),
      row('heating', 'most', -26, 10_600, 5900),
      row('heating', 'least', 15, 5600, 960),
      row('heating', 'least', -15, 3100, 1240),
      row('cooling', 'most', 25, 16_200, 4100),
      row('cooling', 'most', 36, 15_200, 5000),
    ]),
    blower: {
      staticMost: nameplate(200),
      speeds: {
        high: {
          points: ordered(
            [
              [0.9, 20],
              [0.82, 60],
              [0.74, 100],
              [0.62, 150],
              [0.45, 200],
            ].map(([q = 0, p = 0]) => [`p${p}`, { flow: nameplate(q), pressure: nameplate(p) }]),
          ),
        },
      },
    },
    electrics: { voltage: nameplate(240), powerMost: nameplate(6400) },
    outdoorLeast: nameplate(-27),
  };
}

function ducts(rooms: readonly string[]): Entry {
  const trunk = (id: string, from: string | undefined, width: number): [string, Entry] => [
    id,
    {
      name: `Trunk ${id}`,
      kind: 'rectangular',
      width: inches(width),
      height: inches(12),
      length: measured(4),
      insulation: nameplate(1.41),
      ...(from === undefined ? {} : { from }),
    },
  ];
  const branch = (room: string, i: number): [string, Entry] => [
    `to-${room}`,
    {
      name: `To ${room}`,
      kind: 'flexible',
      from: `trunk-${Math.floor(i / 4) + 1}`,
      diameter: inches(8),
      length: measured(4 + (i % 4)),
      insulation: nameplate(1.41),
      fittings: ordered([
        ['collar', { kind: 'collar' }],
        ['bend', { kind: 'bend-flexible', count: measured(2) }],
        ['boot', { kind: 'boot-elbow' }],
      ]),
    },
  ];
  const back = (i: number): [string, Entry] => [
    `return-${i}`,
    {
      name: `Return ${i}`,
      side: 'return',
      kind: 'round',
      diameter: inches(14),
      length: measured(5),
      insulation: nameplate(1.41),
      fittings: ordered([
        ['entry', { kind: 'entry' }],
        ['elbow', { kind: 'elbow-round' }],
      ]),
    },
  ];
  const face = (section: string, room: string, width: number, height: number): Entry => ({
    section,
    room,
    width: inches(width),
    height: inches(height),
  });
  return {
    sections: ordered([
      trunk('trunk-1', undefined, 24),
      trunk('trunk-2', 'trunk-1', 20),
      trunk('trunk-3', 'trunk-2', 14),
      ...rooms.map(branch),
      back(1),
      back(2),
    ]),
    terminals: ordered([
      ...rooms.map((room): [string, Entry] => [`register-${room}`, face(`to-${room}`, room, 12, 8)]),
      ...[1, 2].map((i): [string, Entry] => [`grille-${i}`, face(`return-${i}`, rooms[0] ?? 'room-01', 24, 20)]),
    ]),
  };
}
