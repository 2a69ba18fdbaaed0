import { materials, resistanceOf } from '../../loads/constructions/index.ts';
import type { HouseInputs } from '../../loads/dynamic/houseInputs.ts';
import type { ShellSurface } from '../../loads/dynamic/shell.ts';
import { changedDucts, type DuctsInputs, leakage } from '../ducted/ductworks.ts';

/** What can be done to a house beside its unit. */
export const measures = ['seal', 'ceiling', 'floor', 'panes', 'vents', 'ducts'] as const;
export type Measure = (typeof measures)[number];

/** Money as people pay it for the work done, hired or by oneself. Source: `improve.costs` (common practice). */
export type Cost = { readonly low: number; readonly likely: number; readonly high: number };

/** Leakage that sealing in a weatherisation programme leaves. Source: `improve.seal`. */
const leftAfterSealing = 0.7;
/** m²K/W of ceilings and floors as model codes ask. Source: `improve.insulation`. */
const wanted = { ceiling: 8.6, floor: 5.3 } as const;
/** What a second pane in front of the first adds, m²K/W; and the sun it leaves. Source: `improve.panes`. */
const pane = { resistance: 0.19, sun: 0.9 } as const;
/** Leakage that sealing every joint with mastic leaves in ducts. Source: `improve.ducts`. */
export const leftAfterMastic = 0.25;
/** Money to seal a system of ducts with mastic: low, likely, high. Source: `improve.costs` (common practice). */
export const masticMoney = [80, 300, 900] as const;
/** Share of the fan's air that has to leak before sealing is worth counting. */
const leaky = 0.02;
/** Windows that are worth a second pane, W/(m²K). */
const poorGlass = 2.4;

/** Whether a surface gets insulation, and how much it lacks, m²K/W. */
function lacking(x: ShellSurface, measure: 'ceiling' | 'floor'): number {
  const here = measure === 'ceiling' ? x.behind === 'attic' && x.part === 'ceiling' : x.behind === 'below';
  return here ? Math.max(0, wanted[measure] - resistanceOf(x.layers)) : 0;
}

function insulated(x: ShellSurface, measure: 'ceiling' | 'floor'): ShellSurface {
  const more = lacking(x, measure);
  if (more < 0.2) return x;
  const { conductivity, density, heat } = materials.batt;
  return { ...x, layers: [...x.layers, { thickness: more * conductivity, conductivity, density, heat }] };
}

const eachSurface = (h: HouseInputs, change: (x: ShellSurface) => ShellSurface): HouseInputs => ({
  ...h,
  shell: { ...h.shell, surfaces: h.shell.surfaces.map(change) },
});

const poor = (x: ShellSurface) => x.windows.filter((w) => w.u > poorGlass && w.sunShare > 0);

/** A house and, where they are known, its ducts. */
export type Done = { readonly house: HouseInputs; readonly ducts?: DuctsInputs };

const inHouse =
  (change: (h: HouseInputs) => HouseInputs) =>
  (x: Done): Done => ({ ...x, house: change(x.house) });

/** The house with one thing done to it. */
export const done: Readonly<Record<Measure, (x: Done) => Done>> = {
  seal: inHouse((h) => ({ ...h, envelope: { ...h.envelope, coefficient: h.envelope.coefficient * leftAfterSealing } })),
  ceiling: inHouse((h) => eachSurface(h, (x) => insulated(x, 'ceiling'))),
  floor: inHouse((h) => eachSurface(h, (x) => insulated(x, 'floor'))),
  panes: inHouse((h) =>
    eachSurface(h, (x) => ({
      ...x,
      windows: x.windows.map((w) =>
        poor(x).includes(w) ? { ...w, u: 1 / (1 / w.u + pane.resistance), sunShare: w.sunShare * pane.sun } : w,
      ),
    })),
  ),
  vents: inHouse((h) => ({
    ...h,
    shell: { ...h.shell, roof: { ...h.shell.roof, airChanges: h.shell.roof.airChanges * 2 } },
  })),
  ducts: (x) => (x.ducts ? { ...x, ducts: sealed(x.ducts) } : x),
};

/** Ducts with their joints sealed. */
const sealed = (ducts: DuctsInputs): DuctsInputs =>
  changedDucts(ducts, (x) => ({ ...x, leakage: x.leakage * leftAfterMastic }));

/** So many of what costs so much each. */
export const scaled = (by: number, [low, likely, high]: readonly [number, number, number]): Cost => ({
  low: by * low,
  likely: by * likely,
  high: by * high,
});

/** What a measure costs in this house; undefined where there is nothing to do. */
export function costOf(measure: Measure, { house: h, ducts }: Done): Cost | undefined {
  const { surfaces, rooms } = h.shell;
  const sum = (f: (x: ShellSurface) => number): number => surfaces.reduce((a, x) => a + f(x), 0);
  const area = (kind: 'ceiling' | 'floor'): number => sum((x) => (lacking(x, kind) >= 0.2 ? x.area : 0));
  const floor = rooms.reduce((a, r) => a + r.floorArea, 0);
  const sizes: Readonly<Record<Measure, readonly [number, readonly [number, number, number]]>> = {
    seal: [floor, [3, 6, 12]],
    ceiling: [area('ceiling'), [10, 18, 35]],
    floor: [area('floor'), [12, 22, 40]],
    panes: [sum((x) => poor(x).reduce((a, w) => a + w.width * w.height, 0)), [60, 110, 250]],
    vents: [surfaces.some((x) => x.behind === 'attic') ? 1 : 0, [150, 300, 700]],
    ducts: [ducts && leakage(ducts) > leaky ? 1 : 0, masticMoney],
  };
  const [by, each] = sizes[measure];
  return by > 0 ? scaled(by, each) : undefined;
}

export const plus = (a: Cost, b: Cost): Cost => ({
  low: a.low + b.low,
  likely: a.likely + b.likely,
  high: a.high + b.high,
});
