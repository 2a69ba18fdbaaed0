import { Matrix, solve } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { gasConstant } from '../air/index.ts';
import { heatOfAir } from '../flow/index.ts';
import {
  type Building,
  BuildingRefused,
  compileBuilding,
  heatHeld,
  intake,
  type Layout,
  runBuilding,
  type Slab,
  startState,
  stepBuilding,
  type WeatherRows,
  weatherSteps,
} from './index.ts';
import { wallChain } from './slabModes.ts';
import { known2, slabSlots } from './slabSlots.ts';

const hours = (f: (i: number) => number): Float64Array => Float64Array.from({ length: 48 }, (_, i) => f(i));
/** Two days made by arithmetic; the air stands at the middle of its row. */
const rows: WeatherRows = {
  rowSeconds: 3600,
  firstDay: 0,
  latitude: 45,
  longitude: 0,
  timeZone: 0,
  pressure: 101_325,
  sunOffset: 1800,
  airOffset: 1800,
  dryBulb: hours((i) => 5 + 8 * Math.sin(i / 4)),
  humidityRatio: hours(() => 0.005),
  windSpeed: hours((i) => 3 + Math.cos(i)),
  sky: hours((i) => -10 + 5 * Math.cos(i / 3)),
  dni: hours((i) => (i % 24 > 8 && i % 24 < 16 ? 400 : 0)),
  dhi: hours((i) => (i % 24 > 7 && i % 24 < 17 ? 80 : 0)),
  horizon: [],
};
const weather = weatherSteps(rows, 900);
const wall = [
  { thickness: 0.012, conductivity: 0.16, density: 950, heat: 840 },
  { thickness: 0.066, conductivity: 0.04, density: 12, heat: 840 },
  { thickness: 0.1, conductivity: 0.51, density: 1400, heat: 1000 },
];
const face = (zone: string) => ({ side: 'zone' as const, zone, convective: 2.5, emittance: 0.9 });
const outside = (azimuth: number) => ({
  side: 'outdoors' as const,
  tilt: 90,
  azimuth,
  absorptance: 0.6,
  emittance: 0,
  convective: 20,
});
const slabs: readonly Slab[] = [
  { id: 'south', area: 20, layers: wall, inside: face('room'), other: outside(180) },
  { id: 'north', area: 15, layers: wall, inside: face('shed'), other: outside(0) },
  { id: 'between', area: 10, layers: wall.slice(0, 2), inside: face('room'), other: face('shed') },
  {
    id: 'glass',
    area: 3,
    layers: [{ resistance: 0.3 }],
    inside: face('room'),
    other: { ...outside(180), absorptance: 0 },
  },
  { id: 'floor', area: 20, layers: wall.slice(2), inside: face('room'), other: { side: 'given', series: 0 } },
];
const building: Building = {
  pressure: 101_325,
  zones: [
    { id: 'room', volume: 60 },
    { id: 'shed', volume: 40 },
  ],
  slabs,
  windows: [],
  leakage: [{ kind: 'constant', zone: 'room', flow: 0.01 }],
  passages: [{ between: ['room', 'shed'], buoyant: 0, steady: 0.02 }],
  gains: [{ zone: 'room', watts: Array.from({ length: 24 }, (_, h) => 100 + 10 * h), radiant: 0.5 }],
  systems: [
    {
      id: 'heater',
      sensor: 'room',
      shares: { room: 1 },
      heatTo: Array.from({ length: 24 }, () => [20, 20] as const),
      coolTo: Array.from({ length: 24 }, () => null),
      heatMost: 700,
    },
  ],
  fans: [],
  windFactor: 0.48,
  groundReflectance: 0.2,
  series: [hours(() => 9)],
};

describe('a building', () => {
  it('holds what came in, step by step, whatever its systems do', () => {
    const l = compileBuilding(building, weather);
    const s = startState(l, { inside: 15, outside: 15, humidity: 0.005 });
    const ways = new Float64Array(5);
    for (let step = 0; step < 192; step++) {
      const before = heatHeld(l, s);
      stepBuilding(l, s, weather, step);
      intake(l, s, weather, step, ways);
      const flows = ways.reduce((a, x) => a + Math.abs(x), 0);
      const unclosed = (heatHeld(l, s) - before) / 900 - ways.reduce((a, x) => a + x, 0);
      expect(Math.abs(unclosed)).toBeLessThan(1e-9 * flows);
    }
  });

  it('keeps the set point where the heater can, and gives its most where it cannot', () => {
    const l = compileBuilding(building, weather);
    const s = startState(l, { inside: 23, outside: 23, humidity: 0.005 });
    const seen = { held: 0, most: 0, off: 0 };
    for (let step = 0; step < 192; step++) {
      stepBuilding(l, s, weather, step);
      const [heat = 0] = s.heat;
      const [t = 0] = s.t;
      if (heat === 700) {
        seen.most++;
        expect(t).toBeLessThanOrEqual(20 + 1e-9);
      } else if (heat > 0) {
        seen.held++;
        expect(t).toBeCloseTo(20, 9);
      } else {
        seen.off++;
        expect(t).toBeGreaterThanOrEqual(20 - 1e-9);
      }
    }
    expect(Math.min(...Object.values(seen))).toBeGreaterThan(0);
  });

  it('comes to the steady temperature that resistances alone give', () => {
    const steady = weatherSteps(
      { ...rows, dryBulb: hours(() => 0), sky: hours(() => 0), dni: hours(() => 0), dhi: hours(() => 0) },
      900,
    );
    const gains = [{ zone: 'room', watts: Array.from({ length: 24 }, () => 500), radiant: 0 }];
    const alone = { ...building, gains, systems: [], series: [hours(() => 0)] };
    const l = compileBuilding(alone, steady);
    const s = startState(l, { inside: 0, outside: 0, humidity: 0.005 });
    for (let step = 0; step < 20_000; step++) stepBuilding(l, s, steady, step);
    const ways = new Float64Array(5);
    intake(l, s, steady, 20_000 % l.count, ways);
    // All that is put in leaves by walls and air.
    expect((ways[0] ?? 0) + (ways[1] ?? 0)).toBeCloseTo(-500, 5);
    expect(s.t[0]).toBeGreaterThan(s.t[2] ?? 0);
  });

  // The same network as one dense system, cells and all, in the general matrix library.
  it('goes through the same temperatures as the dense network of all its cells', () => {
    const free = { ...building, systems: [], series: [hours(() => 12)] };
    const l = compileBuilding(free, weather, {}, new Map(), 1e-5);
    const s = startState(l, { inside: 12, outside: 12, humidity: 0.005 });
    const dense = denseNetwork(12);
    for (let step = 0; step < 192; step++) {
      stepBuilding(l, s, weather, step);
      const t = dense(step, (slab) => sunOn(l, slab, step));
      for (let v = 0; v < 4; v++) expect(Math.abs((s.t[v] ?? 0) - (t[v] ?? 0))).toBeLessThan(1e-6);
    }
  });

  it.each([
    ['a zone without surfaces', { ...building, zones: [...building.zones, { id: 'void', volume: 1 }] }, 'void'],
    [
      'a layer without thickness',
      { ...building, slabs: slabs.map((x) => ({ ...x, layers: [{ ...wall[0]!, thickness: 0 }] })) },
      'south',
    ],
    [
      'a negative conductivity',
      { ...building, slabs: slabs.map((x) => ({ ...x, layers: [{ ...wall[0]!, conductivity: -1 }] })) },
      'south',
    ],
    ['a zone nobody has', { ...building, slabs: slabs.map((x) => ({ ...x, inside: face('cellar') })) }, 'south'],
  ])('refuses %s and says where', (_name, bad, at) => {
    try {
      compileBuilding(bad, weather);
      expect.unreachable();
    } catch (thrown) {
      expect(thrown).toBeInstanceOf(BuildingRefused);
      expect((thrown as BuildingRefused).at).toBe(at);
    }
  });

  it('gives the same bits twice, and no number that is none', () => {
    const l = compileBuilding(building, weather);
    const run = () =>
      runBuilding(l, startState(l, { inside: 20, outside: 20, humidity: 0.005 }), weather, { warmUp: 48 });
    expect(run()).toEqual(run());
    for (const column of Object.values(run())) expect([...column].every(Number.isFinite)).toBe(true);
  });

  it('stops when the one who listens throws', () => {
    const l = compileBuilding(building, weather);
    const tell = () => {
      throw new Error('enough');
    };
    expect(() =>
      runBuilding(l, startState(l, { inside: 20, outside: 20, humidity: 0.005 }), weather, { warmUp: 0, tell }),
    ).toThrow('enough');
  });
});

/** Powers of a matrix summed: exp(A t), and the two integrals that a held input needs, by scaling and squaring. */
function exponential(a: Matrix, t: number): { whole: Matrix; first: Matrix; second: Matrix } {
  // exp of [[A, I, 0], [0, 0, I], [0, 0, 0]] t holds exp(At), ∫exp(As)ds and its own integral.
  const n = a.rows;
  const big = Matrix.zeros(3 * n, 3 * n);
  big.setSubMatrix(a, 0, 0);
  big.setSubMatrix(Matrix.eye(n), 0, n);
  big.setSubMatrix(Matrix.eye(n), n, 2 * n);
  const halvings = 14;
  const small = Matrix.mul(big, t / 2 ** halvings);
  let sum = Matrix.eye(3 * n);
  let term = Matrix.eye(3 * n);
  for (let k = 1; k < 18; k++) {
    term = Matrix.mul(term.mmul(small), 1 / k);
    sum = Matrix.add(sum, term);
  }
  for (let k = 0; k < halvings; k++) sum = sum.mmul(sum);
  const part = (j: number) => sum.subMatrix(0, n - 1, j * n, (j + 1) * n - 1);
  return { whole: part(0), first: part(1), second: part(2) };
}

/** W of sun on a slab's second face in a step. */
function sunOn({ slab, sun }: Layout, id: string, step: number): number {
  const into = slab.ids.indexOf(id) * slabSlots + known2;
  return sun.into.reduce((sum, to, e) => {
    const watts = (sun.weight[e] ?? 0) * (sun.series[step * sun.count + (sun.from[e] ?? 0)] ?? 0);
    return to === into ? sum + watts : sum;
  }, 0);
}

/** All cells, faces and nodes of the test building as dense matrices; a step solves faces and nodes at once. */
function denseNetwork(start: number) {
  const dt = 900;
  const density = 101_325 / (gasConstant * 293.15);
  const walls = slabs.map((slab) => {
    const { capacities, links } = wallChain(slab.layers, dt);
    const n = capacities.length;
    const a = Matrix.zeros(n, n);
    const b = Matrix.zeros(n, 2);
    capacities.forEach((c, i) => {
      a.set(i, i, -((links[i] ?? 0) + (links[i + 1] ?? 0)) / c);
      if (i > 0) a.set(i, i - 1, (links[i] ?? 0) / c);
      if (i + 1 < n) a.set(i, i + 1, (links[i + 1] ?? 0) / c);
    });
    if (n > 0) {
      b.set(0, 0, (links[0] ?? 0) / (capacities[0] ?? 1));
      b.set(n - 1, 1, (links[n] ?? 0) / (capacities[n - 1] ?? 1));
    }
    const e = n > 0 ? exponential(a, dt) : undefined;
    return { slab, links, n, b, e, cells: Matrix.ones(Math.max(n, 1), 1).mul(start) };
  });
  const nodes = [start, start, start, start];
  const zoneAt = { room: 0, shed: 2 } as const;
  const all = { room: 20 + 10 + 3 + 20, shed: 15 + 10 };
  const radiation = (zone: 'room' | 'shed', area: number) =>
    (4 * 5.670374e-8 * 293.15 ** 3 * area) / (0.1 / 0.9 + 1 - area / all[zone]);
  return (step: number, sunOn: (slab: string) => number) => {
    const size = 4 + 2 * walls.length;
    const m = Matrix.zeros(size, size);
    const r = Matrix.zeros(size, 1);
    const put = (i: number, j: number, x: number) => m.set(i, j, m.get(i, j) + x);
    const give = (i: number, x: number) => r.set(i, 0, r.get(i, 0) + x);
    const link = (i: number, j: number, g: number) => {
      put(i, i, g);
      put(j, j, g);
      put(i, j, -g);
      put(j, i, -g);
    };
    const outdoor = weather.outdoor[step] ?? 0;
    // A row's flows are those of its first step.
    const now = 101_325 / (gasConstant * ((weather.outdoor[Math.floor(step / 4) * 4] ?? 0) + 273.15));
    const [air0, air2] = [60 * density * heatOfAir, 40 * density * heatOfAir];
    put(0, 0, air0 / dt);
    put(2, 2, air2 / dt);
    give(0, (air0 / dt) * (nodes[0] ?? 0));
    give(2, (air2 / dt) * (nodes[2] ?? 0));
    const leak = 0.01 * density * heatOfAir;
    put(0, 0, leak);
    give(0, leak * outdoor);
    link(0, 2, 0.02 * now * heatOfAir);
    const gain = 100 + 10 * Math.floor((step % 96) / 4);
    give(0, gain / 2);
    give(1, gain / 2);
    walls.forEach((w, i) => {
      const [f1, f2] = [4 + 2 * i, 5 + 2 * i];
      const zoneLinks = (f: number, zone: 'room' | 'shed') => {
        link(zoneAt[zone], f, 2.5 * w.slab.area);
        link(zoneAt[zone] + 1, f, radiation(zone, w.slab.area));
      };
      zoneLinks(f1, w.slab.inside.zone as 'room' | 'shed');
      if (w.slab.other.side === 'zone') zoneLinks(f2, w.slab.other.zone as 'room' | 'shed');
      if (w.slab.other.side === 'outdoors') {
        put(f2, f2, 20 * w.slab.area);
        give(f2, 20 * w.slab.area * outdoor);
        give(f2, sunOn(w.slab.id));
      }
      addWall(w, f1, f2, put, give, dt);
      if (w.slab.other.side === 'given') {
        for (let j = 0; j < size; j++) m.set(f2, j, j === f2 ? 1 : 0);
        r.set(f2, 0, 12);
      }
    });
    const x = solve(m, r);
    for (let v = 0; v < 4; v++) nodes[v] = x.get(v, 0);
    walls.forEach((w, i) => {
      if (!w.e) return;
      const faces = Matrix.columnVector([x.get(4 + 2 * i, 0), x.get(5 + 2 * i, 0)]);
      w.cells = Matrix.add(w.e.whole.mmul(w.cells), w.e.first.mmul(w.b).mmul(faces));
    });
    return nodes;
  };
}

/** Mean heat into a wall at both faces over a step, as rows of the dense system. */
function addWall(
  w: {
    slab: Slab;
    links: number[];
    n: number;
    b: Matrix;
    e: ReturnType<typeof exponential> | undefined;
    cells: Matrix;
  },
  f1: number,
  f2: number,
  put: (i: number, j: number, x: number) => void,
  give: (i: number, x: number) => void,
  dt: number,
): void {
  const { area } = w.slab;
  const [first, last] = [(w.links[0] ?? 0) * area, (w.links[w.n] ?? 0) * area];
  if (!w.e) {
    put(f1, f1, first);
    put(f1, f2, -first);
    put(f2, f2, first);
    put(f2, f1, -first);
    return;
  }
  const memory = Matrix.mul(w.e.first.mmul(w.cells), 1 / dt);
  const held = Matrix.mul(w.e.second.mmul(w.b), 1 / dt);
  put(f1, f1, first - first * held.get(0, 0));
  put(f1, f2, -first * held.get(0, 1));
  give(f1, first * memory.get(0, 0));
  put(f2, f2, last - last * held.get(w.n - 1, 1));
  put(f2, f1, -last * held.get(w.n - 1, 0));
  give(f2, last * memory.get(w.n - 1, 0));
}
